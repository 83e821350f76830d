/**
 * A function of an object that works out its answer once for each, and keeps it as long as the object lives.
 *
 * @param work  pure: the object does not change
 */
export function onceEach<K extends object, V>(work: (key: K) => V): (key: K) => V {
  const known = new WeakMap<K, { readonly answer: V }>()
  return (key) => {
    let kept = known.get(key)
    if (!kept) known.set(key, (kept = { answer: work(key) }))
    return kept.answer
  }
}
