import type { Command } from 'commander'
import type { World } from '../world.ts'
import { addCheck } from './check.ts'
import { addExplain } from './explain.ts'
import { addNew } from './new.ts'
import { addServe } from './serve.ts'
import { addValues } from './values.ts'

/** Puts one command into the program; its action ends with an exit code. */
export type AddCommand = (program: Command, world: World, end: (code: number) => void) => void

/** In the order of the help. */
export const commands: readonly AddCommand[] = [addCheck, addValues, addNew, addExplain, addServe]
