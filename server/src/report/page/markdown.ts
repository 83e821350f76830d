import { visible } from '../../text/visible.ts'
import type { Block, Leaf, Table } from './blocks.ts'

/** The same page for a mail or a repository: words and tables, no pictures. */
export function markdownPage(leaves: readonly Leaf[]): string {
  const sections = leaves.flatMap(({ title, subtitle, sections: list }) => [
    `# ${plain(title)}`,
    plain(subtitle),
    ...list.flatMap((one) => {
      const blocks = one.blocks.flatMap(blockText)
      return blocks.length > 0 ? [`## ${plain(one.title)}`, ...blocks] : []
    }),
  ])
  return `${sections.join('\n\n')}\n`
}

function blockText(block: Block): readonly string[] {
  switch (block.type) {
    case 'text':
      return [plain(block.text)]
    case 'list':
      return [block.items.map((item) => `- ${plain(item)}`).join('\n')]
    case 'table':
      return [tableText(block.table)]
    case 'pictures':
      return block.instead ? [tableText(block.instead)] : []
  }
}

function tableText({ head, figures, rows }: Table): string {
  const line = (cells: readonly string[]) => `| ${cells.map(plain).join(' | ')} |`
  const rule = `| ${head.map((_, i) => (figures.includes(i) ? '--:' : '---')).join(' | ')} |`
  return [line(head), rule, ...rows.map(line)].join('\n')
}

/** Text of anybody: no sign in it makes markup. */
const plain = (text: string): string => visible(text.replace(/\s+/g, ' ')).replace(/[\\`*_{}[\]<>#|~&]/g, '\\$&')
