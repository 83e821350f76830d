/** `/a/b/` of `/a/b/one` and `/a/b/c/other`; empty where they share none. */
export function sharedFolder([first = '', ...others]: readonly string[]): string {
  const steps = first.split('/').slice(0, -1)
  const apart = steps.findIndex((_, i) => {
    const folder = `${steps.slice(0, i + 1).join('/')}/`
    return others.some((path) => !path.startsWith(folder))
  })
  const shared = apart === -1 ? steps : steps.slice(0, apart)
  return shared.map((step) => `${step}/`).join('')
}
