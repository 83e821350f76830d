export function made(tag: string, text: string): HTMLElement {
  const element = document.createElement(tag)
  element.textContent = text
  return element
}

export function button(text: string, press: () => void): HTMLButtonElement {
  const one = made('button', text) as HTMLButtonElement
  one.type = 'button'
  one.addEventListener('click', press)
  return one
}

/** What is put in the place of the part that has the focus has it next. */
export function keepFocus(content: HTMLElement, change: () => void): void {
  const focused = document.activeElement?.getAttribute('data-field')
  const title = document.activeElement?.closest('figure')?.dataset.title
  change()
  if (!focused || document.activeElement !== document.body) return
  const again = [...content.querySelectorAll<HTMLElement>(`[data-field="${CSS.escape(focused)}"]`)]
  again.find((one) => one.closest('figure')?.dataset.title === title)?.focus()
}

/** Puts these parts in, of which one is there already and stays, and with it what has been scrolled to. */
export function replaceAround(content: HTMLElement, stays: Element, parts: readonly Element[]): void {
  for (const child of [...content.children]) if (child !== stays) child.remove()
  const at = parts.indexOf(stays)
  stays.before(...parts.slice(0, at))
  stays.after(...parts.slice(at + 1))
}
