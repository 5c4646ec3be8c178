import { describe, expect, it } from "vitest";
import { fileAt, freshFile, placeOf, safeFile } from "../../../notebooks/engine/store/index.ts";

const shared = { main: "plot.md", apart: false };
const apart = { main: "plot.md", apart: true };

describe("places", () => {
  it.each([
    ["plot.md", shared, "plot.md"],
    ["garden.md", shared, "garden.md"],
    ["plot.md", apart, "plot.md"],
    ["garden.md", apart, "plot.md>garden.md"],
  ])("%s is kept at its place, and found there again", (file, scope, place) => {
    expect(placeOf(file, scope)).toBe(place);
    expect(fileAt(place, scope)).toBe(file);
  });

  it("knows what is none of a notebook's own", () => {
    expect(fileAt("garden.md", apart)).toBeUndefined();
    expect(fileAt("plot.md>garden.md", shared)).toBeUndefined();
    expect(fileAt("other.md>garden.md", apart)).toBeUndefined();
  });
});

describe("file names", () => {
  it.each([
    ["plot.md", "plot.md"],
    ["My plot #1.md", "My-plot-1.md"],
    ["beds>garden.md", "beds-garden.md"],
    ["../../etc/passwd", "etc-passwd.md"],
    ["Hügelbeet.markdown", "Hügelbeet.md"],
    ["", "notebook.md"],
    ["...", "notebook.md"],
  ])("%j is called %s", (name, file) => expect(safeFile(name)).toBe(file));

  it.each([
    [["garden.md"], "plot.md"],
    [["plot.md"], "plot-2.md"],
    [["plot.md", "plot-2.md", "plot-4.md"], "plot-3.md"],
    [["PLOT.md"], "plot-2.md"],
  ])("beside %j, plot.md is called %s", (taken, file) =>
    expect(freshFile("plot.md", taken)).toBe(file),
  );

  it("goes on counting from a name with a number", () => {
    expect(freshFile("plot-2.md", ["plot.md", "plot-2.md"])).toBe("plot-3.md");
  });
});
