import { type Caution, requireRecord } from "../check/index.ts";
import { Checks } from "../measure/index.ts";
import { type CautionOptions, calledFor } from "./called-for.ts";
import { neverBurn, sawingTreatedWood } from "./treated-wood.ts";

/**
 * The caution for treated wood that may hold arsenic: made before 2004, when treating wood for
 * homes with chromated copper arsenate ended in the United States.
 *
 * @param options `because`: what called for it
 * @returns the caution, under the id `old-treated-wood`
 * @rule Treated wood made before 2004 may hold arsenic; stock already treated could still be sold.
 * @source epa-cca-2003, iastate-bed-materials, umn-cca-beds
 * @example
 * oldTreatedWood({ because: "boards kept, row 4" }).because // => "boards kept, row 4"
 */
export function oldTreatedWood(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "old-treated-wood",
      fact: "Treated wood from before 2004 may hold arsenic.",
      advice:
        "Keep it out of beds for food. Where it stays, line its soil side and grow vegetables, root crops above all, at least 12 in (30 cm) from it; wear gloves and wash your hands and the produce. A test of the wood tells for certain; its colour does not.",
      defersTo:
        "Ask your local authority how old treated wood is to be handed in: rules differ by state and county.",
      sources: ["epa-cca-2003", "iastate-bed-materials", "umn-cca-beds"],
    },
    options,
  );
}

/**
 * The caution for sawing boards that have been nailed or screwed before.
 *
 * @param options `because`: what called for it
 * @returns the caution, under the id `nails-in-old-boards`
 * @rule Old boards are searched for metal, and cleared of it, before a saw or drill touches them.
 * @source common practice
 * @example
 * nailsInOldBoards().id // => "nails-in-old-boards"
 */
export function nailsInOldBoards(options: CautionOptions = {}): Caution {
  return calledFor(
    {
      id: "nails-in-old-boards",
      fact: "Old boards hold nails, screws and staples, and grit that dulls a saw.",
      advice:
        "Brush them clean and draw or mark every piece of metal before sawing. Saw where you have looked; wear goggles, stout gloves and shoes that a nail does not go through.",
      defersTo:
        "The saw maker's instructions go above this; a deep wound from a rusty nail is for a doctor.",
      sources: ["common practice"],
    },
    options,
  );
}

/** What is known of a board that was used before. */
export interface OldBoardFacts extends CautionOptions {
  /** Whether it was treated; `null` where nobody knows. Default: `null`. */
  readonly treated?: boolean | null;
  /** The year it was bought, or `null` where nobody knows. Default: `null`. */
  readonly boughtYear?: number | null;
  /** Whether it will be sawn. Default: yes. */
  readonly sawn?: boolean;
}

/** Wood treated in this year or later was not treated with arsenic for use at homes. */
export const FIRST_YEAR_WITHOUT_ARSENIC = 2004;

/**
 * Whether a board may hold arsenic: treated or perhaps treated, and bought before 2004 or nobody
 * knows when. A board known to be untreated never does.
 *
 * @param facts what is known of the board
 * @returns yes or no
 * @throws ProblemError where a fact is of the wrong kind, or the year not from 1800 to 2200
 * @rule Treated (or not known) and bought before 2004 (or not known, where it is treated).
 * @source epa-cca-2003
 * @example
 * mayHoldArsenic({ treated: true, boughtYear: 2002 }) // => true
 */
export function mayHoldArsenic(facts: OldBoardFacts): boolean {
  requireRecord(facts, ["facts"]);
  const { treated = null, boughtYear = null, sawn = true } = facts;
  const checks = new Checks()
    .choice(treated, [true, false, null], ["treated"])
    .choice(sawn, [true, false], ["sawn"]);
  if (boughtYear !== null) checks.count(boughtYear, ["boughtYear"], { min: 1800, max: 2200 });
  checks.done();
  if (treated === false) return false;
  if (boughtYear === null) return treated === true;
  return boughtYear < FIRST_YEAR_WITHOUT_ARSENIC;
}

/**
 * The cautions an old board calls for: arsenic where it may hold some; nails, dust and never
 * burning where it is sawn.
 *
 * @param facts what is known of the board; `because`: which it is
 * @returns the cautions, each once
 * @throws ProblemError where a fact is of the wrong kind, or the year not from 1800 to 2200
 * @rule Treated before 2004 may hold arsenic; a sawn old board is searched for metal; treated dust is kept off.
 * @source epa-cca-2003, gtr-190, common practice
 * @example
 * cautionsForOldBoard({ treated: false, sawn: true }).map((caution) => caution.id) // => ["nails-in-old-boards"]
 */
export function cautionsForOldBoard(facts: OldBoardFacts): readonly Caution[] {
  const arsenic = mayHoldArsenic(facts);
  const { treated = null, sawn = true } = facts;
  const perhapsTreated = treated === true || arsenic;
  return [
    ...(arsenic ? [oldTreatedWood(facts)] : []),
    ...(sawn ? [nailsInOldBoards(facts)] : []),
    ...(sawn && perhapsTreated ? [sawingTreatedWood(facts)] : []),
    ...(perhapsTreated ? [neverBurn(facts)] : []),
  ];
}
