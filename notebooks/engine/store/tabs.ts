import type { EnteredValue } from "./record-types.ts";
import { isEnteredValue, isRecord } from "./shapes.ts";

/** What one open page tells the others after something of it was written. */
export type TabNews =
  /** Entries of a place, by name; null is a default again. */
  | {
      readonly what: "entered";
      readonly place: string;
      readonly cells: Readonly<Record<string, EnteredValue | null>>;
    }
  | {
      readonly what: "text";
      readonly place: string;
      readonly text: string;
      readonly title: string;
      readonly revision: number;
    }
  /** The plans of a notebook, or the list of the reader's documents. */
  | { readonly what: "plans" | "documents"; readonly main: string };

/** The other open pages of this workbook in the same browser. */
export interface OtherTabs {
  changed(news: TabNews): void;
  /** Gives a function that ends the listening. */
  heard(listener: (news: TabNews) => void): () => void;
}

/** What is needed of a `BroadcastChannel`; one is one. */
export interface Channel {
  postMessage(message: unknown): void;
  addEventListener(type: "message", listener: (event: { readonly data: unknown }) => void): void;
}

/** The other pages over a channel. What is not well formed, as from another version, is not heard. */
export function otherTabs(channel: Channel): OtherTabs {
  const listeners = new Set<(news: TabNews) => void>();
  channel.addEventListener("message", ({ data }) => {
    const news = readNews(data);
    if (news) for (const listener of listeners) listener(news);
  });
  return {
    changed(news) {
      try {
        channel.postMessage({ bedwright: 1, news });
      } catch {
        // A channel that was closed: the page is about to end.
      }
    },
    heard(listener) {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
  };
}

/** Where there is nobody to tell. */
export const noOtherTabs: OtherTabs = { changed: () => undefined, heard: () => () => undefined };

function readNews(data: unknown): TabNews | undefined {
  if (!isRecord(data) || data.bedwright !== 1 || !isRecord(data.news)) return undefined;
  const { news } = data;
  return isNews(news) ? news : undefined;
}

function isNews(news: Readonly<Record<string, unknown>>): news is TabNews {
  const { what, place, main, cells, text, title, revision } = news;
  if (what === "plans" || what === "documents") return typeof main === "string";
  if (typeof place !== "string") return false;
  if (what === "entered")
    return (
      isRecord(cells) &&
      Object.values(cells).every((value) => value === null || isEnteredValue(value))
    );
  return (
    what === "text" &&
    typeof text === "string" &&
    typeof title === "string" &&
    Number.isSafeInteger(revision)
  );
}
