/**
 * Stands for the package that finds addresses in bare text. Prose here makes links only where they
 * are written as such, so the page need not carry it; the Markdown parser makes one all the same.
 */
export class LinkifyIt {
  test(): boolean {
    return false;
  }
  match(): null {
    return null;
  }
}
