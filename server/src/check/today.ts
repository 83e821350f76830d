/** What the adapters know and the layers below may not ask for. */
export interface Today {
  /** The date, year-month-day. */
  readonly today: string
  /** How many years of weather a review works out; as many as it wants where nothing is said. */
  readonly years?: number
}
