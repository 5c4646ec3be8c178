import type { Units } from "../types/index.ts";
import { readRecord } from "./records.ts";
import type { Storage } from "./storage.ts";

export async function keepUnits(storage: Storage, units: Units): Promise<void> {
  await storage.change("settings", (before) =>
    readRecord("settings", before).is === "newer"
      ? undefined
      : { kind: "settings", version: 1, units },
  );
}

export async function loadUnits(storage: Storage): Promise<Units | undefined> {
  const read = readRecord("settings", await storage.get("settings"));
  return read.is === "record" ? read.record.units : undefined;
}
