/** An instant as people say it: "today 14:05", "yesterday 9:30", "3 April 14:05". */
export function whenInWords(at: string, now: Date): string {
  const date = new Date(at);
  if (Number.isNaN(date.getTime())) return at;
  const time = `${date.getHours()}:${String(date.getMinutes()).padStart(2, "0")}`;
  const yesterday = new Date(now);
  yesterday.setDate(now.getDate() - 1);
  if (isSameDay(date, now)) return `today ${time}`;
  if (isSameDay(date, yesterday)) return `yesterday ${time}`;
  const year = date.getFullYear() === now.getFullYear() ? {} : ({ year: "numeric" } as const);
  const day = date.toLocaleDateString("en-GB", { day: "numeric", month: "long", ...year });
  return `${day} ${time}`;
}

function isSameDay(a: Date, b: Date): boolean {
  return a.toDateString() === b.toDateString();
}
