/** Addresses of a page's parts, as the webview may load them. */
export interface PageParts {
  readonly cspSource: string;
  readonly nonce: string;
  readonly script: string;
  readonly style: string;
  /** The document shown. */
  readonly uri: string;
}

/** The page, empty but for its script and style: what it shows is made by the script, never as markup. */
export function pageHtml({ cspSource, nonce, script, style, uri }: PageParts): string {
  const policy = `default-src 'none'; script-src 'nonce-${nonce}'; style-src ${cspSource}`;
  return `<!DOCTYPE html>
<html lang="en">
  <head>
    <meta charset="utf-8">
    <meta http-equiv="Content-Security-Policy" content="${escaped(policy)}">
    <meta name="viewport" content="width=device-width, initial-scale=1">
    <link rel="stylesheet" href="${escaped(style)}">
    <title>Slatwright picture</title>
  </head>
  <body data-uri="${escaped(uri)}">
    <script nonce="${nonce}" src="${escaped(script)}"></script>
  </body>
</html>
`;
}

function escaped(text: string): string {
  return text.replace(/[&<>"]/g, (c) => `&#${c.charCodeAt(0)};`);
}
