/** Lets the buttons in the head of a table sort its rows; what is not known stays last either way. */
export function sortable(table: HTMLTableElement): void {
  const heads = [...table.tHead!.rows[0]!.cells]
  heads.forEach((head, column) => {
    head.querySelector('button')?.addEventListener('click', () => {
      const up = head.getAttribute('aria-sort') === 'descending'
      for (const one of heads) one.removeAttribute('aria-sort')
      head.setAttribute('aria-sort', up ? 'ascending' : 'descending')
      const body = table.tBodies[0]!
      body.append(...[...body.rows].sort((a, b) => compare(a.cells[column]!, b.cells[column]!, up ? 1 : -1)))
    })
  })
}

function compare(a: HTMLTableCellElement, b: HTMLTableCellElement, sign: number): number {
  const [x, y] = [a.dataset.sort ?? a.textContent, b.dataset.sort ?? b.textContent]
  if (x === '' || y === '') return Number(x === '') - Number(y === '')
  return sign * (a.dataset.sort === undefined ? x.localeCompare(y) : Number(x) - Number(y))
}
