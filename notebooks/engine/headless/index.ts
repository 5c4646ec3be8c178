export { type CommandLine, commandLine } from "./command-line.ts";
