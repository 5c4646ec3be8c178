import { describe, expect, it } from "vitest";
import {
  type FollowOptions,
  type FromOthers,
  followOtherTabs,
} from "../../../../notebooks/engine/page/keep/follow.ts";
import type { TabNews } from "../../../../notebooks/engine/store/index.ts";
import type { CellId, TableText } from "../../../../notebooks/engine/types/index.ts";

function following(more: Partial<FollowOptions> = {}) {
  let tell: (news: TabNews) => void = () => undefined;
  const entered = new Map<CellId, string | TableText>();
  const taken: FromOthers[] = [];
  const saw: CellId[] = [];
  const revisions: [string, number][] = [];
  const page = new EventTarget();
  const follow = followOtherTabs({
    others: {
      changed: () => undefined,
      heard(listener) {
        tell = listener;
        return () => {
          tell = () => undefined;
        };
      },
    },
    scope: { main: "plot.md", apart: false },
    keeper: {
      saw: (values) => saw.push(...values.keys()),
      sawText: (place, revision) => revisions.push([place, revision]),
    },
    book: {
      entered,
      documents: new Map([
        ["plot.md", { file: "plot.md", title: "", blocks: [], problems: [] }],
        ["garden.md", { file: "garden.md", title: "", blocks: [], problems: [] }],
      ]),
    },
    take: (from) => taken.push(from),
    focused: () => false,
    page,
    ...more,
  });
  return { follow, tell: (news: TabNews) => tell(news), entered, taken, saw, revisions, page };
}

const entry = (value: string | null, place = "plot.md"): TabNews => ({
  what: "entered",
  place,
  cells: { kerf: value },
});
const text = (revision: number, place = "plot.md"): TabNews => ({
  what: "text",
  place,
  text: `# ${revision}\n`,
  title: "",
  revision,
});

describe("what other tabs write", () => {
  it("is shown at once, and counts as seen", () => {
    const { tell, taken, saw, revisions } = following();
    tell(entry("1/4"));
    tell(entry(null));
    tell(text(3));
    expect(taken.map(({ entered, texts }) => [...entered, ...texts])).toEqual([
      [["plot.md#kerf", "1/4"]],
      [["plot.md#kerf", undefined]],
      [["plot.md", "# 3\n"]],
    ]);
    expect(saw).toEqual(["plot.md#kerf", "plot.md#kerf"]);
    expect(revisions).toEqual([["plot.md", 3]]);
  });

  it("is none of a notebook's business where it is of another place", () => {
    const { tell, taken } = following();
    tell(entry("1/4", "other.md"));
    tell(entry("1/4", "plot.md>garden.md"));
    tell(text(3, "other.md"));
    expect(taken).toEqual([]);
    const apart = following({ scope: { main: "plot.md", apart: true } });
    apart.tell(entry("1/4", "garden.md"));
    apart.tell(entry("1/8", "plot.md>garden.md"));
    expect(apart.taken.map(({ entered }) => [...entered])).toEqual([[["garden.md#kerf", "1/8"]]]);
  });

  it("waits while the field has the focus, and is shown when it is left", async () => {
    let focused = true;
    const { tell, taken, saw, page } = following({ focused: () => focused });
    tell(entry("1/4"));
    tell(entry("3/16"));
    expect([taken, saw]).toEqual([[], []]);
    focused = false;
    page.dispatchEvent(new Event("focusout"));
    await expect.poll(() => taken.length).toBe(1);
    expect([...(taken[0]?.entered ?? [])]).toEqual([["plot.md#kerf", "3/16"]]);
  });

  it("gives way to what was typed here meanwhile", () => {
    let focused = true;
    const { follow, tell, taken, entered } = following({ focused: () => focused });
    tell(entry("1/4"));
    entered.set("plot.md#kerf", "mine");
    focused = false;
    follow.catchUp();
    expect(taken).toEqual([]);
  });

  it("waits while the document is being edited; then the newest is shown", () => {
    let editing = true;
    const { follow, tell, taken, revisions } = following({ editing: () => editing });
    tell(text(3));
    tell(text(4));
    expect(taken).toEqual([]);
    editing = false;
    follow.catchUp();
    expect(taken.map(({ texts }) => [...texts])).toEqual([[["plot.md", "# 4\n"]]]);
    expect(revisions).toEqual([["plot.md", 4]]);
  });

  it("is shown though one edits, where it stands instead of what was written here", () => {
    const { follow, tell, taken, revisions } = following({ editing: () => true });
    tell(text(3));
    follow.stands({ place: "plot.md", text: "# theirs\n", revision: 4 });
    expect(taken.map(({ texts }) => [...texts])).toEqual([[["plot.md", "# theirs\n"]]]);
    expect(revisions).toEqual([["plot.md", 4]]);
    follow.catchUp();
    expect(taken).toHaveLength(1);
  });

  it("tells of nothing once it ended", () => {
    const { follow, tell, taken } = following();
    follow.end();
    tell(entry("1/4"));
    expect(taken).toHaveLength(0);
  });
});
