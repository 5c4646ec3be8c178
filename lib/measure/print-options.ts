/** Which system of units people read. */
export type UnitSystem = "us" | "metric";

/** How quantities are printed. */
export interface PrintOptions {
  /** `us` (feet, cubic yards, pounds) or `metric`; `us` unless given. */
  readonly system?: UnitSystem;
  /**
   * `plain` as people type it ("8 ft 3 1/2 in"), for files and the command line; `typographic` as
   * it is set on a page ("8′ 3 1⁄2″", with U+2044 for the `frac` feature). `plain` unless given.
   */
  readonly style?: "plain" | "typographic";
  /** A unit by its symbol ("in", "cu ft", "lb/cu yd"); chosen by size unless given. */
  readonly unit?: string;
  /** Significant digits, 1 to 15; 3 unless given. Whole digits are never dropped. */
  readonly digits?: number;
  /** For volumes: a liquid, so gallons and fluid ounces rather than cubic feet. */
  readonly liquid?: boolean;
  /** Mark before decimals; `.` unless given. */
  readonly decimal?: "." | ",";
  /** Whether thousands are set apart; true unless given. */
  readonly grouped?: boolean;
}

/** A printed quantity in parts: the figure, its unit, and the same in the other system. */
export interface PrintedParts {
  /** The whole: "4.2 cu yd". */
  readonly text: string;
  /** The figure alone; all of `text` where the unit stands inside it, as in "8 ft 3 1/2 in". */
  readonly number: string;
  /** The unit alone; empty where it stands inside the figure. */
  readonly unit: string;
  /** The same in the other system: "3.21 m³"; absent for money, times and numbers. */
  readonly second?: string;
}
