const begins = "bedwright-paper-begins";
const ends = "bedwright-paper-ends";

/** Has a part of the page made ready for paper, and for the screen again after. */
export function onPaper(
  element: HTMLElement,
  { begin, end }: { readonly begin: () => void; readonly end: () => void },
): void {
  element.dataset.paper = "";
  element.addEventListener(begins, begin);
  element.addEventListener(ends, end);
}

/** Tells all parts that are on the page. */
export function tellPaper(printing: boolean): void {
  for (const element of document.querySelectorAll("[data-paper]"))
    element.dispatchEvent(new Event(printing ? begins : ends));
}

/** What an A4 sheet has between its margins, in CSS pixels; Letter has a little more. */
export const sheetWidth = 687;
