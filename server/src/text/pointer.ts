/** JSON pointers (RFC 6901). */
export function childPointer(parent: string, key: string | number): string {
  return `${parent}/${escapeKey(String(key))}`
}

/** The keys on the way from the root: `/stc/voc` is `['stc', 'voc']`, '' is none. */
export function pointerKeys(pointer: string): string[] {
  return pointer === '' ? [] : pointer.slice(1).split('/').map(unescapeKey)
}

/** The pointer without its last key; the root's is the root. */
export function parentPointer(pointer: string): string {
  return pointer.slice(0, Math.max(0, pointer.lastIndexOf('/')))
}

export function escapeKey(key: string): string {
  return key.includes('~') || key.includes('/') ? key.replaceAll('~', '~0').replaceAll('/', '~1') : key
}

export function unescapeKey(key: string): string {
  return key.includes('~') ? key.replaceAll('~1', '/').replaceAll('~0', '~') : key
}
