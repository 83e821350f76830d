import { phrase } from '../wording/phrase.ts'
import type { Draft, Task } from './draft.ts'
import { problem } from './draft.ts'
import { gaugeArea, gaugeNumber } from './gauge.ts'
import { spelling } from './notes.ts'

/** Sizes that only wire gauges have. */
const bare = /^\s*([1-4]\/0)\s*$/
const form = /^\s*(?:(?:AWG|gauge)\s*(?:#\s*)?(\d+(?:\/0)?)|(?:#\s*)?(\d+(?:\/0)?)\s*(?:AWG|ga|gauge)\.?)\s*$/i

/** A conductor size in American wire gauge, as its area: `10 AWG`, `AWG 2/0`. null: it is none. */
export function readGauge(task: Task): Draft | null {
  const { text } = task.plain
  const match = bare.exec(text) ?? form.exec(text)
  if (!match) return null
  const gauge = gaugeNumber(match[1] ?? match[2] ?? '')
  if (Number.isNaN(gauge)) {
    const message = phrase`"${task.plain.typed.trim()}" is no wire gauge; sizes are 40 to 1 AWG and 1/0 to 4/0 AWG`
    return problem(task, 'no-number', 0, task.plain.text.length, message)
  }
  // a gauge is a defined diameter, so nothing is rounded off
  const quantity = { dimension: 'area', value: gaugeArea(gauge), unit: 'AWG', unitDefaulted: false, half: 0 } as const
  const notes = bare.test(text) ? [uncalled(task, text.trim())] : []
  return { quantity: { kind: task.kind, ...quantity }, notes }
}

function uncalled(task: Task, size: string) {
  const start = task.plain.text.indexOf(size)
  const replacement = `${size} AWG`
  return spelling(task, {
    start,
    end: start + size.length,
    replacement,
    message: phrase`"${size}" was read as ${replacement}`,
    why: phrase`a wire gauge`,
  })
}
