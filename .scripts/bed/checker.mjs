/** How the checker fares on records with a known mistake. `program` is a bundle of its sources. */
export function checker({ createLibrary, checkFile, readFile, applyEdits }) {
  const today = { today: '2026-09-01' }
  const path = 'it.panel.yaml'
  const isSerious = ({ severity }) => severity === 'error' || severity === 'warning'
  const seriousIn = (text, beside = []) => {
    const library = createLibrary()
    beside.forEach((other, i) => library.put(`${i}.panel.yaml`, other))
    library.put(path, text)
    return checkFile(library, path, today).findings.filter(isSerious)
  }
  const wholes = { pmax: '/stc/pmax', voc: '/stc/voc', isc: '/stc/isc' }
  /** Numbers by pointer, coefficients as shares; other texts as typed. */
  const valuesOf = (text) => {
    const { fields } = readFile(path, text)
    const value = (pointer) => fields.get(pointer)?.value
    return new Map(
      [...fields].map(([pointer, { value: own, quantity, text: typed }]) => {
        const whole = wholes[pointer.replace('/temperature_coefficients/', '')]
        if (whole && quantity && quantity.dimension !== 'per-kelvin') return [pointer, own / value(whole)]
        return [pointer, typeof own === 'number' ? own : typed]
      }),
    )
  }
  const off = (a, b) => (typeof a === 'number' && typeof b === 'number' ? Math.abs(a / b - 1) : a === b ? 0 : Infinity)
  /** Pointers in which a text is further from the truth than a share. */
  const wrongIn = (text, truth, most, coarse = {}) => {
    const values = valuesOf(text)
    return [...truth]
      .filter(([pointer, value]) => !(off(values.get(pointer), value) <= most + (coarse[pointer] ?? 0)))
      .map(([pointer]) => pointer)
  }

  /** What the sentence says that the field should read: the first correction, and the second where both are named. */
  const namedIn = ({ message, corrections: [first, second] }) => {
    const isEither = second && message.includes(` or ${second.text}`)
    return [first, isEither && second].filter(Boolean)
  }

  return { seriousIn, valuesOf, one, untilQuiet }

  /**
   * What is said of a text with a mistake, where `clean` is the text without it. `coarse` are shares by pointer that the digits
   * of another unit have cut off, which nobody can put back.
   */
  function one(typed, clean, pointers, { beside, coarse } = {}) {
    const known = new Set(seriousIn(clean, beside).map(({ rule, pointer }) => `${rule} ${pointer}`))
    const before = process.cpuUsage()
    const found = seriousIn(typed, beside)
    const cpu = cpuSince(before)
    const fresh = found.filter(({ rule, pointer }) => !known.has(`${rule} ${pointer}`))
    const truth = valuesOf(clean)
    const after = fresh.flatMap((finding) => {
      const offered = namedIn(finding).map(({ edits, pointer, also = [] }) => {
        const text = applyEdits(typed, edits)
        const wrong = wrongIn(text, truth, 0.01, coarse)
        const isExact = !wrongIn(text, truth, 0.003, coarse).includes(pointer)
        const isWrong = [pointer, ...also.map((one) => one.pointer)].some((one) => wrong.includes(one))
        // all that was mistyped, the field that is named to the digit
        return {
          isFixed: isExact && pointers.includes(pointer) && !pointers.some((one) => wrong.includes(one)),
          isWrong,
        }
      })
      const [first] = offered
      return first ? { isFixed: first.isFixed, isWrong: offered.every(({ isWrong }) => isWrong) } : []
    })
    return {
      caught: fresh.length > 0,
      placed: fresh.some(({ pointer }) => pointers.includes(pointer)),
      fixed: after.some(({ isFixed }) => isFixed),
      wrong: after.some(({ isWrong }) => isWrong),
      cpu,
      fresh,
    }
  }

  /** How a record ends once all that is offered first has been taken, by which steps, and what is wrong in it then. */
  function untilQuiet(typed, clean) {
    const truth = valuesOf(clean)
    const steps = []
    let text = typed
    for (let step = 0; step < 8; step++) {
      const found = seriousIn(text)
      const left = wrongIn(text, truth, 0.01)
      if (found.length === 0) return { end: left.length > 0 ? 'quiet but wrong' : 'restored', steps, left, text }
      const one = found.find(({ corrections }) => corrections.length > 0)
      if (!one) return { end: 'reported', steps, left, text }
      steps.push(one)
      text = applyEdits(text, one.corrections[0].edits)
    }
    return { end: 'reported', steps, left: [], text }
  }
}

/** Milliseconds of processor time. */
export function cpuSince(before) {
  const { user, system } = process.cpuUsage(before)
  return (user + system) / 1000
}
