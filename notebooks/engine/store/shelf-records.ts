import type { Figure, Units } from "../types/index.ts";
import { type AnswerRecord, readRecord } from "./records.ts";
import type { Storage } from "./storage.ts";

/** Remembers a notebook's first pinned answer for the shelf. */
export async function keepAnswer(
  storage: Storage,
  answer: { file: string; title: string; figure: Figure; on: string },
): Promise<void> {
  await storage.change(`answer:${answer.file}`, (before) =>
    readRecord("answer", before).is === "newer"
      ? undefined
      : ({ kind: "answer", version: 1, ...answer } satisfies AnswerRecord),
  );
}

export async function loadAnswer(
  storage: Storage,
  file: string,
): Promise<AnswerRecord | undefined> {
  const read = readRecord("answer", await storage.get(`answer:${file}`));
  return read.is === "record" ? read.record : undefined;
}

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
