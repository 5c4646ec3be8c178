/** The declarations of one element, by property name as CSS writes it. */
export class InlineStyle {
  readonly #declarations = new Map<string, string>();

  setProperty(name: string, value: unknown): void {
    if (value === null || value === undefined || value === "") this.#declarations.delete(name);
    else this.#declarations.set(name, String(value));
  }

  removeProperty(name: string): void {
    this.#declarations.delete(name);
  }

  getPropertyValue(name: string): string {
    return this.#declarations.get(name) ?? "";
  }

  get cssText(): string {
    return [...this.#declarations].map(([name, value]) => `${name}:${value}`).join(";");
  }

  set cssText(text: string) {
    this.#declarations.clear();
    for (const declaration of String(text).split(";")) {
      const colon = declaration.indexOf(":");
      if (colon <= 0) continue;
      this.setProperty(declaration.slice(0, colon).trim(), declaration.slice(colon + 1).trim());
    }
  }
}

/** The same with its properties in camel case too: `style.fontSize = "12px"`. */
export function styleByName(style: InlineStyle): InlineStyle {
  return new Proxy(style, {
    get(target, key) {
      if (typeof key !== "string") return undefined;
      if (!(key in target)) return target.getPropertyValue(cssName(key));
      const own: unknown = Reflect.get(target, key, target);
      return typeof own === "function" ? own.bind(target) : own;
    },
    set(target, key, value) {
      if (key === "cssText") target.cssText = String(value);
      else if (typeof key === "string") target.setProperty(cssName(key), value);
      return true;
    },
  });
}

function cssName(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`);
}
