# Prints the blocks of a sheet with reportlab.
import json, sys
from reportlab.lib import colors
from reportlab.lib.pagesizes import A4, landscape
from reportlab.lib.styles import ParagraphStyle
from reportlab.pdfbase import pdfmetrics
from reportlab.pdfbase.ttfonts import TTFont
from reportlab.platypus import Paragraph, SimpleDocTemplate, Spacer, Table, TableStyle

sheet = json.load(open(sys.argv[1]))
pdfmetrics.registerFont(TTFont('D', '/usr/share/fonts/truetype/dejavu/DejaVuSans.ttf'))
style = sheet['style']
text = ParagraphStyle('t', fontName='D', fontSize=8, leading=10)
head = ParagraphStyle('h', fontName='D', fontSize=11, leading=15)
escape = lambda t: str(t).replace('&', '&amp;').replace('<', '&lt;')
made = [Paragraph(escape(sheet['title']), head)]
for b in sheet['blocks']:
    if b['kind'] == 'heading': made.append(Paragraph(escape(b['text']), head)); continue
    if b['kind'] == 'line': made.append(Paragraph(escape(b['text']), text)); continue
    width = max(len(r) for r in b['rows'])
    rows = [[c if c is not None else '' for c in r] + [''] * (width - len(r)) for r in b['rows']]
    commands = [('FONT', (0, 0), (-1, -1), 'D', 7.5), ('ALIGN', (1, 0), (-1, -1), style['align'].upper()), ('BOTTOMPADDING', (0, 0), (-1, -1), style['pad']), ('TOPPADDING', (0, 0), (-1, -1), style['pad'])]
    if style['lines']: commands.append(('GRID', (0, 0), (-1, -1), 0.3, colors.grey))
    for y, r in enumerate(b['rows']):
        x = 0
        while x < len(r):
            n = 1
            while x + n < len(r) and r[x + n] is None: n += 1
            if n > 1: commands.append(('SPAN', (x, y), (x + n - 1, y)))
            x += n
    made += [Table(rows, style=TableStyle(commands), hAlign='LEFT', repeatRows=b.get('heads', 0)), Spacer(1, 8)]
SimpleDocTemplate(sys.argv[2], pagesize=landscape(A4) if style['landscape'] else A4, leftMargin=36, rightMargin=36, topMargin=36, bottomMargin=36).build(made)
