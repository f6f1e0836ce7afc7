export function floorFolder(root: string, named: string | undefined, needed: readonly string[]): string;
export function makeLog(floor: string, file: string, rows: number, truth: string): void;
export function makeSite(file: string): void;
