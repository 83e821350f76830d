// What was read of a sheet, beside what a careful person types from it.

const bare = (name) => name.toLowerCase().replace(/[^\p{L}\p{N}]+/gu, '')

/** A text in one spelling. */
function plain(field, text) {
  const t = String(text)
    .replace(/[\s\u00a0\u202f]/g, '')
    .replace(/[−–]/g, '-')
    .replace(/\/(?:°C|K)$/, '/K')
    .replace(/Wp$/, 'W')
  if (field === '/stc/tolerance') return t.replace(/^[-+]?0?\/\+?/, '0/+').replace(/^\+/, '0/+')
  return t.replace(/^\+/, '').replace(/\d+(?:\.\d+)?/g, (n) => String(Number(n)))
}

/** { right, missed, wrong } lists of texts, for one sheet. */
export function count({ name, layout, language, producer, models }, sheet) {
  const all = { name, layout, language, producer, right: [], missed: [], wrong: [] }
  for (const [model, truth] of Object.entries(models)) {
    const own =
      model === ''
        ? sheet.models.length === 1
          ? sheet.models[0]
          : undefined
        : sheet.models.find(
            (one) => bare(one.name).includes(bare(model)) || (one.name && bare(model).includes(bare(one.name))),
          )
    const readings = own?.readings ?? []
    for (const [field, texts] of Object.entries(truth)) {
      const reading = readings.find((r) => r.field === field)
      if (!reading) all.missed.push(`${model} ${field} ${texts[0]}`)
      else if (texts.some((t) => plain(field, t) === plain(field, reading.typed))) all.right.push(field)
      else all.wrong.push(`${model} ${field} ${texts[0]} read as ${reading.typed} ("${reading.label}" ${reading.text})`)
    }
    for (const r of readings)
      if (!(r.field in truth) && !/^\/(?:certificates|warranty)/.test(r.field))
        all.wrong.push(`${model} ${r.field} is not printed, read as ${r.typed} ("${r.label}" ${r.text})`)
  }
  return all
}

export function report(counts, { each }) {
  if (each)
    for (const { name, language, producer, missed, wrong } of counts) {
      if (missed.length + wrong.length === 0) continue
      console.log(`\n${name} ${language} ${producer}`)
      for (const line of wrong) console.log(`  WRONG ${line}`)
      for (const line of missed) console.log(`  missed ${line}`)
    }
  const share = (part, whole) => `${((100 * part) / Math.max(1, whole)).toFixed(1)} %`.padStart(8)
  const line = (what, some) => {
    const n = (key) => some.reduce((sum, c) => sum + c[key].length, 0)
    const whole = n('right') + n('missed') + n('wrong')
    console.log(
      what.padEnd(14),
      String(some.length).padStart(4),
      String(whole).padStart(6),
      share(n('right'), whole),
      `${((100 * n('wrong')) / Math.max(1, whole)).toFixed(2)} %`.padStart(8),
    )
  }
  console.log('\n            sheets values    right    wrong')
  for (const key of ['layout', 'language', 'producer'])
    for (const value of [...new Set(counts.map((c) => c[key]))].sort())
      line(
        value,
        counts.filter((c) => c[key] === value),
      )
  line('all', counts)
}
