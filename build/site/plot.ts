import { Plot } from "../plot.ts";
import { addPart } from "./parts.ts";

addPart("Plot", Plot);
