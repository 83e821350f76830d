export declare function bundleCases(): string
export declare function bundle(name: string, outfile: string, platform: 'node' | 'browser'): string
export declare function companion(): string
export declare function writeManifest(folder: string, manifest: object): void
export declare function packOtherYamlExtension(): Promise<string>
export declare function otherYamlExtension(folder: string): void
