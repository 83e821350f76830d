/** How long work is done before other requests have their turn [ms]. */
const slice = 10

/** One after the other, with a pause for other requests whenever some time has passed. */
export async function* inSlices<T>(items: Iterable<T>): AsyncGenerator<T> {
  let since = performance.now()
  for (const item of items) {
    yield item
    if (performance.now() - since < slice) continue
    await new Promise((resolve) => setTimeout(resolve, 0))
    since = performance.now()
  }
}
