import { readFileSync } from 'node:fs'

/**
 * What a process takes of the memory of this machine [bytes], buffers outside of the heap included; null where the system keeps no
 * file of it, as only Linux does.
 */
export function memoryOf(pid: number): number | null {
  try {
    const pages = readFileSync(`/proc/${pid}/statm`, 'utf8').split(' ')[1]
    return 4096 * Number(pages)
  } catch {
    return null
  }
}
