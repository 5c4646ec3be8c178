import { aq } from "../arquero.ts";
import { addPart } from "./parts.ts";

addPart("aq", aq);
