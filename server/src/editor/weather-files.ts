import { weatherNamedIn } from '../records/weather-file.ts'

/** Files of hourly weather that records name: each is read once, as nobody types them, and a change on disk is reported. */
export interface WeatherFiles {
  /** Reads those that a record names and nobody has asked for yet. */
  want(path: string, text: string): void
  /** Reads one again, where it was asked for. */
  changed(path: string): void
}

export function createWeatherFiles(read: (path: string) => void): WeatherFiles {
  const asked = new Set<string>()
  return {
    want(path, text) {
      for (const named of weatherNamedIn(path, text)) {
        if (asked.has(named)) continue
        asked.add(named)
        read(named)
      }
    },
    changed(path) {
      if (asked.has(path)) read(path)
    },
  }
}
