/**
 * A function of an object that works out its answer once for each, and keeps it as long as the object lives. For functions that
 * are made once: each gives its objects a shape of their own, which those that live as long as one check should not.
 *
 * @param work  pure: the object does not change
 */
export function onceEach<K extends object, V>(work: (key: K) => V): (key: K) => V {
  // a private field of the object, as V8 keeps the answers of a WeakMap until it next collects all of its memory
  class Answered extends Same {
    readonly #answer: V

    constructor(key: K, answer: V) {
      super(key)
      this.#answer = answer
    }

    static answer(key: K | Answered): V {
      return #answer in key ? key.#answer : new Answered(key, work(key)).#answer
    }
  }
  return (key) => Answered.answer(key)
}

/** The same, kept as long as the function itself is. */
export function onceEachWhile<K, V>(work: (key: K) => V): (key: K) => V {
  const answers = new Map<K, V>()
  return (key) => {
    if (!answers.has(key)) answers.set(key, work(key))
    return answers.get(key) as V
  }
}

/** Its subclasses put their fields into an object that is there already. */
const Same = function (one: object) {
  return one
} as unknown as new (one: object) => object
