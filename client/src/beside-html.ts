import { Uri, type Webview } from 'vscode'

/** The page of the view: a script and a style sheet of the package, and a policy that allows nothing else. */
export function besideHtml(webview: Webview, folder: Uri): string {
  const address = (name: string) => String(webview.asWebviewUri(Uri.joinPath(folder, name)))
  const policy = `default-src 'none'; script-src ${webview.cspSource}; style-src ${webview.cspSource}`
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>Beside the record</title>
<link rel="stylesheet" href="${address('view.css')}">
</head>
<body>
<main id="content" tabindex="-1" data-reader="${address('sheet.js')}"></main>
<script src="${address('view.js')}"></script>
</body>
</html>`
}
