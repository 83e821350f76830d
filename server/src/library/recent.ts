/**
 * Keeps what was used lately: at least the last `most` values that were asked for, and at most twice as many. What is
 * forgotten is made anew by whoever asks again.
 */
export class Recent<V> {
  private now = new Map<string, V>()
  private before = new Map<string, V>()
  private readonly most: number

  constructor(most: number) {
    this.most = most
  }

  get(key: string): V | undefined {
    const value = this.now.get(key)
    if (value !== undefined) return value
    const earlier = this.before.get(key)
    if (earlier !== undefined) this.set(key, earlier)
    return earlier
  }

  set(key: string, value: V): void {
    if (this.most <= this.now.size && !this.now.has(key)) {
      this.before = this.now
      this.now = new Map()
    }
    this.now.set(key, value)
  }

  /** Keeps a value unless another one would be forgotten for it. */
  setWhereRoom(key: string, value: V): void {
    if (this.now.size < this.most) this.now.set(key, value)
  }

  delete(key: string): void {
    this.now.delete(key)
    this.before.delete(key)
  }

  clear(): void {
    this.now.clear()
    this.before.clear()
  }
}
