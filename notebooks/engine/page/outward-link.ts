/**
 * Makes a link out of the site. A browser may look up and connect to an address as soon as the
 * pointer passes over its link, which tells whoever wrote the notebook that it is being read; so the
 * link has its address only from the moment it is pressed or focused. Until then the address is read
 * in its title, and in `data-address`.
 */
export function makeOutward(link: HTMLElement, address: string): void {
  link.dataset.address = address;
  link.setAttribute("role", "link");
  link.setAttribute("tabindex", "0");
  link.setAttribute("rel", "noreferrer noopener");
  if (!link.title) link.title = address;
  const put = () => link.setAttribute("href", address);
  const takeAway = () => link.removeAttribute("href");
  link.addEventListener("pointerdown", put);
  link.addEventListener("focus", put);
  link.addEventListener("blur", takeAway);
}
