import type { Length } from "../measure/index.ts";
import type { Section } from "./section.ts";

/** Which boards run through at the corners: the long sides, or the ends. */
export type Lap = "sides" | "ends";

/** A frame of boards, complete: what a bed's walls, cap and stakes are cut from. */
export interface FrameSpec {
  /** The bed's name, unique: "A-1". */
  readonly name: string;
  /** True outside length and width, length the longer as a rule; up to 100 ft. */
  readonly length: Length;
  readonly width: Length;
  /** Boards stacked, 1 to 10. */
  readonly courses: number;
  readonly section: Section;
  readonly timber?: string;
  readonly lap: Lap;
  /** Section of a seat board laid flat on the wall, or `null`. */
  readonly cap: Section | null;
  /** How far the cap reaches beyond the outside of the wall. Default 1 in. */
  readonly capReach?: Length;
  /** Default `mitred`. Butted caps lap at the corners as the walls do. */
  readonly capJoint?: "mitred" | "butted";
  /** How many stakes hold each long side between its corners, or 0. */
  readonly stakes: number;
  /** Needed where there are stakes. */
  readonly stakeSection?: Section;
  readonly stakeLength?: Length;
}
