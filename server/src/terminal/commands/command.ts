import type { Command } from 'commander'
import type { World } from '../world.ts'

/** Puts one command into the program; its action ends with an exit code. */
export type AddCommand = (program: Command, world: World, end: (code: number) => void) => void
