/**
 * How a page looks, on a screen and on paper. Two leaves fit A4 and Letter alike: the width is that of A4, the height that of
 * Letter, less margins. Nothing is smaller than 9 pt.
 */
export const style = `
@page { margin: 7mm 12mm; }
* { box-sizing: border-box; }
html { color-scheme: light; background: #fff; }
body { margin: 0 auto; padding: 8mm 0; width: 186mm; font: 9pt/1.14 'Liberation Sans', Arial, Helvetica, sans-serif; color: #1b1b1b; }
section.leaf { display: grid; grid-template-columns: 1fr 1fr; column-gap: 5mm; }
section.leaf > * { grid-column: span 2; min-width: 0; }
section.leaf > .half { grid-column: span 1; }
section.leaf + section.leaf { break-before: page; margin-top: 16mm; }
h1 { font-size: 16pt; line-height: 1.15; margin: 0; overflow-wrap: anywhere; }
h2 { font-size: 10pt; margin: 2px 0 1px; border-bottom: 1px solid #767676; break-after: avoid; }
h3 { font-size: 9pt; font-weight: 600; margin: 0; }
p { margin: 2px 0; }
p.under { color: #4a4a4a; }
p.lead { font-size: 10pt; }
ul { margin: 0; padding-left: 12px; }
ul.two, div.two { columns: 2; column-gap: 6mm; }
li { break-inside: avoid; overflow-wrap: anywhere; }
table { border-collapse: collapse; width: 100%; }
th, td { text-align: left; padding: 0 6px 0 0; vertical-align: top; overflow-wrap: anywhere; }
th { font-weight: 600; border-bottom: 1px solid #9a9a9a; overflow-wrap: break-word; }
tr { break-inside: avoid; }
tr.sum td { border-top: 1px solid #9a9a9a; font-weight: 600; }
table.form th, table.form td { border: 1px solid #9a9a9a; padding: 1px 3px; overflow-wrap: break-word; }
table.form td:first-child { white-space: nowrap; }
table.boxes td { height: 8mm; }
.figure { text-align: right; white-space: nowrap; }
table.form .figure { white-space: normal; }
.pictures { display: flex; flex-wrap: wrap; gap: 4px 10px; }
.pictures figure { margin: 0; break-inside: avoid; max-width: 100%; }
svg { display: block; font-family: inherit; max-width: 100%; height: auto; }
@media screen and (max-width: 190mm) { body { width: auto; padding: 4mm; } section.leaf { display: block; } .wide { overflow-x: auto; } }
@media print { body { width: auto; padding: 0; } section.leaf { display: grid; grid-template-columns: 1fr 1fr; column-gap: 5mm; }
section.leaf > * { grid-column: span 2; min-width: 0; }
section.leaf > .half { grid-column: span 1; }
section.leaf + section.leaf { margin-top: 0; } }
`
