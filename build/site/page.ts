import { readCsv, writeCsv } from "../../lib/table/index.ts";
import { newerNotice } from "../../notebooks/engine/page/share/newer.ts";
import { startPage } from "../../notebooks/engine/page/start.ts";
import {
  memoryStorage,
  openIndexedDb,
  otherTabs,
  textJournal,
} from "../../notebooks/engine/store/index.ts";
import { unpackReference } from "../docs/pack.ts";
import { frameAddress, workOffline } from "./offline/register.ts";

/** A file of the site as text; undefined where there is none. */
async function textOf(path: string): Promise<string | undefined> {
  const response = await fetch(path);
  return response.ok ? response.text() : undefined;
}

/** Fetches once, however often it is asked for. */
function once<T>(fetchIt: () => Promise<T>): () => Promise<T> {
  let asked: Promise<T> | undefined;
  return () => {
    asked ??= fetchIt();
    return asked;
  };
}

function script(name: string): () => Promise<string> {
  return once(async () => {
    const text = await textOf(`room/${name}.js`);
    if (text === undefined) throw new Error(`the site has no room/${name}.js`);
    return text;
  });
}

/** Today where the reader is, as an ISO date. */
function today(): string {
  const now = new Date();
  const two = (part: number) => String(part).padStart(2, "0");
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}

async function start(): Promise<void> {
  const [notebooks, sources] = await Promise.all([
    textOf("notebooks/list.json"),
    textOf("notebooks/sources.json"),
  ]);
  const { storage = memoryStorage(), words } = await openIndexedDb();
  await startPage({
    root: document.body,
    notebooks: JSON.parse(notebooks ?? "[]"),
    sources: JSON.parse(sources ?? "{}"),
    loadReference: once(async () => {
      const text = await textOf("reference.json");
      if (text === undefined) throw new Error("the site has no reference.json");
      return unpackReference(text);
    }),
    loadNotebook: (file) => textOf(`notebooks/${encodeURIComponent(file)}`),
    engineUrl: frameAddress(),
    code: {
      // The published tables and the rules of the library are data: they come as a file of their own.
      room: once(async () => {
        const [facts, room] = await Promise.all([script("facts")(), script("room")()]);
        return `${facts}\n;\n${room}`;
      }),
      longWork: script("work"),
      solver: once(async () => (await fetch("room/highs.wasm")).arrayBuffer()),
      extras: { Plot: script("plot"), aq: script("arquero") },
    },
    csv: { readCsv, writeCsv },
    storage,
    ...(words === undefined ? {} : { storageTrouble: words }),
    others: otherTabs(new BroadcastChannel("bedwright")),
    journal: textJournal(localStorage, crypto.randomUUID()),
    today: today(),
  });
  // The first answers go before what is fetched for another day. Where it can't be (a private window,
  // no network) the page works as it did, with a network.
  setTimeout(() => workOffline(tellNewer).catch(() => undefined), 1_500);
}

function tellNewer(use: () => void): void {
  document.querySelector(".newer")?.remove();
  document.body.prepend(newerNotice(use));
}

void start();
