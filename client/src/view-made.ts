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
