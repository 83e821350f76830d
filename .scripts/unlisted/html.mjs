// Blocks as a page for programs that print HTML.

const safe = (text) =>
  String(text)
    .replace(/&/g, '&amp;')
    .replace(/</g, '&lt;')
    .replace(/_\{([^}]*)\}/g, '<sub>$1</sub>')

export function htmlOf({ title, language, blocks }, style) {
  return `<!doctype html><html lang="${language}"><head><meta charset="utf-8"><style>${css(style)}</style></head><body><h1>${safe(title)}</h1>${blocks.map((b) => block(b, style)).join('\n')}</body></html>`
}

const css = ({ font, lines, align, landscape, pad }) =>
  `@page{size:A4${landscape ? ' landscape' : ''};margin:14mm}body{font:10px ${font};margin:0}table{border-collapse:collapse;width:100%;margin:0 0 8px}td,th{padding:${pad}px 6px;text-align:${align};${lines ? 'border:1px solid #999' : 'border-bottom:1px solid #eee'}}td:first-child,th:first-child{text-align:left}h1{font-size:18px}h2{font-size:12px;margin:8px 0 3px;background:#dde}.cols{display:flex;gap:14px}.cols>div{flex:1}.cards{display:flex;flex-wrap:wrap;gap:10px}.cards div{width:120px}.cards b{font-size:17px}.grid{display:flex;flex-wrap:wrap}.grid div{width:30%;padding:4px}.up th{height:110px;vertical-align:bottom}.up th span{writing-mode:vertical-rl;transform:rotate(180deg)}.narrow td:first-child{width:70px}.glyphs i{font-style:normal;letter-spacing:0.2px}sub{font-size:70%}.sec td{background:#eee;font-weight:bold}`

function block(b, style) {
  if (b.kind === 'heading') return `<h2>${safe(b.text)}</h2>`
  if (b.kind === 'line') return `<p style="margin:2px 0">${safe(b.text)}</p>`
  if (b.kind === 'space') return '<p style="margin:0">&nbsp;</p>'.repeat(b.lines)
  if (b.kind === 'cards')
    return `<div class=cards>${b.cards.map(([value, label]) => `<div><b>${safe(value)}</b><br>${safe(label)}</div>`).join('')}</div>`
  if (b.kind === 'grid')
    return `<div class=grid>${b.cells.map(([label, value]) => `<div>${safe(label)}<br><b>${safe(value)}</b></div>`).join('')}</div>`
  if (b.kind === 'columns')
    return style.flex
      ? `<div class=cols>${b.parts.map((part) => `<div>${part.map((x) => block(x, style)).join('')}</div>`).join('')}</div>`
      : b.parts
          .flat()
          .map((x) => block(x, style))
          .join('')
  return table(b)
}

function table({ rows, upright, narrow, glyphs }) {
  const classes = [upright && 'up', narrow && 'narrow', glyphs && 'glyphs'].filter(Boolean).join(' ')
  const line = ({ head, section, cells }) => {
    const tag = head ? 'th' : 'td'
    return `<tr${section ? ' class=sec' : ''}>${cells.map((c) => cell(typeof c === 'string' ? { text: c } : c, tag, glyphs)).join('')}</tr>`
  }
  const heads = rows.filter((r) => r.head)
  const body = rows.filter((r) => !r.head)
  return `<table class="${classes}">${heads.length ? `<thead>${heads.map(line).join('')}</thead>` : ''}<tbody>${body.map(line).join('')}</tbody></table>`
}

function cell({ text, span }, tag, glyphs) {
  const inner = glyphs
    ? `<i>${[...String(text)].map((c) => (c === ' ' ? ' ' : `<span>${safe(c)}</span>`)).join('')}</i>`
    : tag === 'th'
      ? `<span>${safe(text)}</span>`
      : safe(text)
  return `<${tag}${span ? ` colspan=${span}` : ''}>${inner}</${tag}>`
}
