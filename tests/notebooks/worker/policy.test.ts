import { describe, expect, it } from "vitest";
import { framePage, framePolicy, pagePolicy } from "../../../notebooks/engine/worker/policy.ts";

const directives = (policy: string) =>
  new Map(
    policy.split("; ").map((one) => {
      const [name = "", ...values] = one.split(" ");
      return [name, values] as const;
    }),
  );

describe("framePolicy", () => {
  const policy = directives(framePolicy("sha256-abc"));

  it("loads nothing from anywhere", () => {
    expect(policy.get("default-src")).toEqual(["'none'"]);
    expect(policy.get("connect-src")).toEqual(["'none'"]);
    expect(policy.get("form-action")).toEqual(["'none'"]);
    expect(policy.get("base-uri")).toEqual(["'none'"]);
    expect(policy.get("worker-src")).toEqual(["blob:"]);
  });

  it("lets no script run but the one of the hash", () => {
    expect(policy.get("script-src")).toEqual([
      "'sha256-abc'",
      "'unsafe-eval'",
      "'wasm-unsafe-eval'",
    ]);
  });
});

describe("pagePolicy", () => {
  it("has no eval, no inline script and no inline style", () => {
    expect(pagePolicy()).not.toMatch(/unsafe/);
  });

  it("takes scripts, styles and connections from its own site only", () => {
    const policy = directives(pagePolicy("https://beds.test/engine.html"));
    for (const name of ["default-src", "script-src", "style-src", "connect-src", "font-src"])
      expect(policy.get(name), name).toEqual(["'self'"]);
    expect(policy.get("frame-src")).toEqual(["https://beds.test/engine.html"]);
    expect(policy.get("object-src")).toEqual(["'none'"]);
  });
});

describe("framePage", () => {
  it("names the policy before the script", () => {
    const page = framePage("start()", "sha256-abc");
    expect(page.indexOf("Content-Security-Policy")).toBeLessThan(page.indexOf("<script>"));
    expect(page).toContain("<script>start()</script>");
  });
});
