interface Sized {
  readonly path: string;
  readonly lines: number;
}
export function linesOf(text: string): number;
export function judgeSizes(files: readonly Sized[]): {
  readonly files_n: number;
  readonly median: number;
  readonly p90: number;
  readonly largest: number;
  readonly tooLong: readonly Sized[];
};
