import { startFrame } from "../../notebooks/engine/worker/frame.ts";

startFrame();
