import type { Problem } from "../check/index.ts";
import { foot, inch, metre, minorDigits, times, zeroOf } from "../measure/index.ts";
import {
  counted,
  fields,
  listed,
  named,
  orNull,
  requireShape,
  sized,
  worded,
} from "../measure/shape.ts";
import type { BoardWorth, Certificate } from "./certificate.ts";
import { Findings } from "./findings.ts";
import { groupOf, type RestsKept, valueTables, wholeUnits } from "./most-valuable.ts";

const millimetreUp = { min: times(0.001, metre), max: times(110, foot) };
const upTo = { min: zeroOf(inch), max: times(110, foot) };
const aSum = sized("money");
const kept = fields({ from: sized("length", upTo), worth: sized("price per length") });
const ofKind = { section: named, timber: worded };
/** A certificate with the fields it has, each of its kind; not whether it holds. */
export const certificateShape = fields({
  pieces: listed(
    fields({
      ...ofKind,
      takes: sized("length", millimetreUp),
      count: counted({ max: 1_000_000 }),
      value: aSum,
    }),
  ),
  boards: listed(
    fields({
      ...ofKind,
      yard: orNull(named),
      length: sized("length", upTo),
      room: sized("length", upTo),
      partRoom: orNull(sized("length", upTo)),
      price: aSum,
      worth: aSum,
      limit: orNull(counted({ max: 1_000_000 })),
      rebate: aSum,
    }),
  ),
  others: listed(fields({ what: worded, sum: aSum })),
  kerf: sized("length", upTo),
  offcuts: orNull(kept),
  floor: aSum,
});

// Sums are shown in money to 1/100,000 of the minor unit; one such is a grain. Prices that carry a
// share of the trips are no whole number of grains: each sum may be off by one.
const slackGrains = 1;
const remedy = "Don't rely on this floor: make the plan again, and report this.";

const inGrains = (certificate: Certificate) => {
  const { floor } = certificate;
  const perMajor = 10 ** (minorDigits(floor.currency) + 5);
  return (money: { readonly si: number }): number => money.si * perMajor;
};

function restsOf(certificate: Certificate, perMajor: number): RestsKept | null {
  const { offcuts, kerf } = certificate;
  if (offcuts === null) return null;
  const unitsPerMetre = wholeUnits(1);
  return {
    kerfU: wholeUnits(kerf.si),
    fromU: wholeUnits(offcuts.from.si),
    perU: (offcuts.worth.si * perMajor) / unitsPerMetre,
  };
}

/** What one board says of itself against what the table says; gives what it may take off the floor. */
function checkBoard(
  findings: Findings,
  board: { readonly given: BoardWorth; readonly at: number },
  {
    worth,
    grains,
  }: { readonly worth: number; readonly grains: (m: BoardWorth["price"]) => number },
): void {
  const { price, limit, rebate, worth: said } = board.given;
  const path = ["boards", board.at + 1];
  const words = (most: number, given: number) => ({
    allowed: `at least ${most} hundred-thousandths of the minor unit`,
    received: String(given),
  });
  const worthSaid = grains(said);
  const isCounted = worthSaid >= worth - slackGrains;
  findings.holds(isCounted, [...path, "worth"], words(worth, worthSaid));
  const over = worth - grains(price);
  if (limit === null) {
    findings.holds(over <= slackGrains, [...path, "price"], words(worth, grains(price)));
    findings.holds(grains(rebate) >= -slackGrains, [...path, "rebate"], words(0, grains(rebate)));
    return;
  }
  const least = Math.max(0, over) * limit;
  const isEnough = grains(rebate) >= least - slackGrains * (1 + limit);
  findings.holds(isEnough, [...path, "rebate"], words(least, grains(rebate)));
}

/**
 * Checks a floor from the numbers it is shown with, and nothing else: the most valuable filling of
 * every board is worked out again in whole numbers, by a table that has nothing to do with the
 * planner. Values are counted in 1/100,000 of the minor unit and lengths in 1/320 mm; each sum may be
 * off by one such.
 *
 * @param certificate as a plan gives it; counts and limits up to 1,000,000, lengths up to 110 ft, each
 * piece taking 1 mm or more
 * @returns all that is wrong; an empty list where the floor holds: a piece worth less than nothing, a
 * board without limit that yields more than its price, a worth or a rebate too small, a floor above
 * the sum
 * @throws ProblemError for what is no certificate at all
 * @rule floor <= sum of value x count - rebates + other parts, where no board without limit can be
 * cut into pieces worth more than its price (the duals of Gilmore and Gomory's programme)
 * @source gilmore-gomory-1961
 * @example
 * const timber = "treated"
 * const pieces = [{ section: "2x12", timber, takes: times(4, foot), count: 3, value: money(10) }]
 * const eight = { yard: "North", section: "2x12", timber, length: times(8, foot), room: times(8, foot), partRoom: null, price: money(20), worth: money(20), limit: null, rebate: money(0) }
 * const certificate = { pieces, boards: [eight], others: [], kerf: times(0, inch), offcuts: null, floor: money(30) }
 * checkCertificate(certificate) // => []
 * checkCertificate({ ...certificate, floor: money(31) }).length // => 1
 */
export function checkCertificate(certificate: Certificate): readonly Problem[] {
  requireShape(certificate, certificateShape, ["certificate"]);
  const { pieces, boards, others, floor } = certificate;
  const findings = new Findings(remedy, slackGrains);
  const grains = inGrains(certificate);
  const values = pieces.map(({ value }) => Math.round(grains(value)));
  for (const [at, value] of values.entries()) {
    const words = { allowed: "nothing or more", received: String(value) };
    findings.holds(value >= 0, ["pieces", at + 1, "value"], words);
  }
  const tables = valueTables(certificate, values);
  const rests = restsOf(certificate, grains({ si: 1 }));
  for (const [at, given] of boards.entries()) {
    const room = {
      roomU: wholeUnits(given.room.si),
      partU: given.partRoom && wholeUnits(given.partRoom.si),
      rests: given.yard === null ? null : rests,
    };
    const worth = tables.get(groupOf(given))?.worth(room) ?? 0;
    checkBoard(findings, { given, at }, { worth, grains });
  }
  const sum =
    pieces.reduce((total, { count }, at) => total + count * (values[at] ?? 0), 0) -
    boards.reduce((total, { rebate }) => total + grains(rebate), 0) +
    others.reduce((total, part) => total + grains(part.sum), 0);
  const slack = slackGrains * (1 + boards.length + others.length);
  findings.holds(grains(floor) <= sum + slack, ["floor"], {
    allowed: `at most ${sum} hundred-thousandths of the minor unit`,
    received: String(grains(floor)),
  });
  return findings.problems;
}
