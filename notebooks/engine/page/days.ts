/** An ISO date with the month's name; what is no date stays as it is. */
export function dayInWords(iso: string): string {
  const date = new Date(`${iso}T12:00:00`);
  return Number.isNaN(date.getTime())
    ? iso
    : date.toLocaleDateString("en", { day: "numeric", month: "long", year: "numeric" });
}
