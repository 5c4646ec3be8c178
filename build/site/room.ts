import { startRoom } from "../../notebooks/engine/worker/room.ts";
import { makeHost } from "../host.ts";
import { facts, parts } from "./parts.ts";

startRoom((remote) =>
  makeHost({
    longWork: remote,
    ...facts(),
    style: "typographic",
    extras: parts(),
  }),
);
