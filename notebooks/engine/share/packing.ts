import { deflateSync, inflateSync, strFromU8, strToU8 } from "fflate";

/**
 * What links often hold, the commonest last: the packer refers to it instead of repeating it. It is
 * part of the format: another text here makes another format.
 */
const dictionary = strToU8(
  "lengthEntry volumeEntry moneyEntry numberEntry choiceEntry yesNoEntry countEntry percentEntry " +
    '```js cell pinned "quiet folded```csv table ```uses garden.md\\n\\n' +
    "trip_cost,tax,tax_on,delivery,delivery_from,distance,payload goods and delivery " +
    "yard,item,size,price,form,limit,from,step board bag bulk pack roll kit compost topsoil pine bark " +
    "corner plate liner steel kit screws section,length,count,timber,bought,sound " +
    "bed,length,width,count,courses,section,timber,lap,cap,stakes,liner,soil_depth,depth_now,built," +
    "east,north,turned none sides ends untreated cedar treated metric " +
    '"2x4","2x6","2x8","2x10","2x12","yes","no","16 ft","12 ft","10 ft","8 ft","4 ft"," cu yd"," in","$' +
    'yards prices onHand beds units boards.md one-bed.md ["rebuild.md","0","garden.md",[["',
);

/** Bytes at most that a link may unpack to. */
const mostBytes = 2_000_000;

/** Packs a text: raw deflate (RFC 1951) with the dictionary above. */
export function packed(text: string): Uint8Array {
  return deflateSync(strToU8(text), { level: 9, mem: 12, dictionary });
}

/** The text; undefined where the bytes are not packed text, "too much" where there is too much of it. */
export function unpacked(bytes: Uint8Array): string | undefined | "too much" {
  try {
    // Room for one byte more than allowed: what fills it is too much, and never grows further.
    const out = inflateSync(bytes, { out: new Uint8Array(mostBytes + 1), dictionary });
    if (out.length > mostBytes) return "too much";
    return strFromU8(out);
  } catch {
    return undefined;
  }
}
