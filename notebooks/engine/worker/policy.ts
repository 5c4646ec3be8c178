/**
 * The policy of `engine.html`, the hidden frame: nothing may be loaded from anywhere. Its one
 * inline script is named by its hash; workers are made from blobs and inherit all of this.
 * `unsafe-eval` lets the closed room compile cells; the page outside never has it.
 *
 * @param scriptHash the `sha256-…` of the inline script, as `openssl` or `crypto.subtle` give it in base64
 */
export function framePolicy(scriptHash: string): string {
  return [
    "default-src 'none'",
    `script-src '${scriptHash}' 'unsafe-eval' 'wasm-unsafe-eval'`,
    "worker-src blob:",
    "connect-src 'none'",
    "form-action 'none'",
    "base-uri 'none'",
  ].join("; ");
}

/**
 * The policy of the page outside: its own scripts, styles and fonts, the one frame, and nothing
 * from anywhere else. No `eval`, no inline script, no inline style.
 *
 * @param frameUrl the address of `engine.html`; `'self'` where the site's address is not known at build time
 */
export function pagePolicy(frameUrl = "'self'"): string {
  return [
    "default-src 'self'",
    "script-src 'self'",
    "style-src 'self'",
    "img-src 'self' data:",
    "font-src 'self'",
    "connect-src 'self'",
    `frame-src ${frameUrl}`,
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}

/**
 * The whole of `engine.html` around its script. The script must not hold `</script`.
 */
export function framePage(script: string, scriptHash: string): string {
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${framePolicy(scriptHash)}">
<title>The closed room</title>
</head>
<body><script>${script}</script></body>
</html>
`;
}
