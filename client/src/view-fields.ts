/** A click on a part of a picture, Enter or the space bar lead to its field; what a sheet prints may not be typed yet. */
export function leadToFields(content: HTMLElement, lead: (field: string, isTyped: boolean) => void): void {
  const go = (event: Event) => {
    const part = (event.target as Element).closest?.('[data-field]')
    if (!part || (event.target as Element).closest('thead')) return
    event.preventDefault()
    lead(part.getAttribute('data-field')!, !part.classList.contains('not-typed'))
  }
  content.addEventListener('click', go)
  content.addEventListener('keydown', (event) => {
    const isButton = event.target instanceof HTMLButtonElement // it makes a click of its own
    if (!isButton && (event.key === 'Enter' || event.key === ' ')) go(event)
  })
}

/** Marks what stands for the cursor's field: that field, else the nearest group around it, and all that is in it. */
export function markField(content: HTMLElement, field: string | null): void {
  const parts = [...content.querySelectorAll('figure [data-field], tr[data-field]')]
  const of = (part: Element) => part.getAttribute('data-field')!
  const around = parts.map(of).filter((one) => field !== null && `${field}/`.startsWith(`${one}/`))
  const nearest = around.reduce((best, one) => (one.length > best.length ? one : best), '')
  for (const part of parts) {
    const marked = field !== null && (of(part) === nearest || of(part).startsWith(`${field}/`))
    part.classList.toggle('here', marked)
    if (marked) part.setAttribute('aria-current', 'true')
    else part.removeAttribute('aria-current')
  }
  content.querySelector('.mark.here')?.scrollIntoView({ block: 'nearest', inline: 'nearest' })
}
