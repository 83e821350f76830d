/** Names of a browser that the library mentions while it loads and never uses for text. */
class Nothing {}
for (const name of ['DOMMatrix', 'ImageData', 'Path2D']) {
  if (!(name in globalThis)) Object.assign(globalThis, { [name]: Nothing })
}
