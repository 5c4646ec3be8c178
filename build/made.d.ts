declare module "made:rules" {
  const rules: readonly { name: string; rule?: string; sources: readonly string[] }[];
  export default rules;
}
declare module "made:data" {
  const files: Readonly<Record<string, string>>;
  export default files;
}
