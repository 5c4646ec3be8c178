export { TinyDocument } from "./document.ts";
export { svgSpace, TinyElement } from "./element.ts";
