/** One line a bundle, with its size. */
export function metafileSizes(metafiles) {
  return metafiles
    .flatMap(({ outputs }) => Object.entries(outputs))
    .map(([path, { bytes }]) => `${path.padEnd(22)} ${(bytes / 1000).toFixed(1).padStart(7)} kB`)
}
