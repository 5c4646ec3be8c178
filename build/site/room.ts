import data from "made:data";
import rules from "made:rules";
import { startRoom } from "../../notebooks/engine/worker/room.ts";
import { makeHost } from "../host.ts";
import { parts } from "./parts.ts";

startRoom((remote) =>
  makeHost({
    longWork: remote,
    data,
    rules,
    style: "typographic",
    extras: parts.bedwrightParts ?? {},
  }),
);
