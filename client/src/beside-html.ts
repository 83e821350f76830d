import { Uri, l10n, type Webview } from 'vscode'
import { viewWords } from './view-words.ts'

/** The page of the view: a script and a style sheet of the package, and a policy that allows nothing else. */
export function besideHtml(webview: Webview, folder: Uri): string {
  const address = (name: string) => String(webview.asWebviewUri(Uri.joinPath(folder, name)))
  const policy = `default-src 'none'; script-src ${webview.cspSource}; style-src ${webview.cspSource}`
  return `<!doctype html>
<html lang="${l10n.t('en')}">
<head>
<meta charset="utf-8">
<meta http-equiv="Content-Security-Policy" content="${policy}">
<meta name="viewport" content="width=device-width, initial-scale=1">
<title>${escaped(l10n.t('Beside the record'))}</title>
<link rel="stylesheet" href="${address('view.css')}">
</head>
<body>
<main id="content" tabindex="-1" data-reader="${address('sheet.js')}" data-words="${escaped(JSON.stringify(viewWords()))}"></main>
<script src="${address('view.js')}"></script>
</body>
</html>`
}

/** Words of a bundle in markup. */
const escaped = (text: string) => text.replace(/[&<>"]/g, (sign) => `&#${sign.charCodeAt(0)};`)
