import { build } from 'esbuild'

/** Parts of the model itself, from its source, so that what is fitted is the density that scores records. */
export async function modelSource(contents) {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: 'server/src/slips', loader: 'ts' },
    bundle: true,
    format: 'esm',
    write: false,
  })
  return import(`data:text/javascript;base64,${Buffer.from(outputFiles[0].text).toString('base64')}`)
}
