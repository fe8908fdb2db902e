/** One file of a bundle. */
export interface Bundled {
  readonly name: string;
  readonly bytes: Uint8Array<ArrayBuffer>;
}

const TABLE = Uint32Array.from({ length: 256 }, (_, byte) => {
  let value = byte;
  for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
  return value >>> 0;
});

export function crc32(bytes: Uint8Array): number {
  let crc = 0xffffffff;
  for (const byte of bytes) crc = ((crc >>> 8) ^ (TABLE[(crc ^ byte) & 0xff] as number)) >>> 0;
  return (crc ^ 0xffffffff) >>> 0;
}

/** Every file is dated 1 January 1980, the earliest a bundle can say: the days are in the book. */
const DOS_DATE = 0x21;
const STORED = 0;

/**
 * Files in one bundle that every system opens (ZIP without compression: photos are compressed already).
 * Below 4 GB and 65,535 files, which a browser's memory ends long before.
 */
export function zipOf(files: readonly Bundled[]): Blob {
  const parts: BlobPart[] = [];
  const directory: BlobPart[] = [];
  let offset = 0;
  let directory_B = 0;
  for (const { name, bytes } of files) {
    const title = new TextEncoder().encode(name);
    const common = [20, 0x0800, STORED, 0, DOS_DATE] as const;
    const crc = crc32(bytes);
    const local = record(30, (write) => {
      write.u32(0x04034b50);
      for (const half of common) write.u16(half);
      write.u32(crc);
      write.u32(bytes.length);
      write.u32(bytes.length);
      write.u16(title.length);
      write.u16(0);
    });
    const central = record(46, (write) => {
      write.u32(0x02014b50);
      write.u16(20);
      for (const half of common) write.u16(half);
      write.u32(crc);
      write.u32(bytes.length);
      write.u32(bytes.length);
      write.u16(title.length);
      for (let i = 0; i < 4; i++) write.u16(0);
      write.u32(0);
      write.u32(offset);
    });
    parts.push(local, title, bytes);
    directory.push(central, title);
    offset += local.length + title.length + bytes.length;
    directory_B += central.length + title.length;
  }
  const end = record(22, (write) => {
    write.u32(0x06054b50);
    write.u16(0);
    write.u16(0);
    write.u16(files.length);
    write.u16(files.length);
    write.u32(directory_B);
    write.u32(offset);
    write.u16(0);
  });
  return new Blob([...parts, ...directory, end], { type: "application/zip" });
}

interface Writer {
  u16(value: number): void;
  u32(value: number): void;
}

function record(length: number, fill: (write: Writer) => void): Uint8Array<ArrayBuffer> {
  const bytes = new Uint8Array(length);
  const view = new DataView(bytes.buffer);
  let at = 0;
  fill({
    u16: (value) => {
      view.setUint16(at, value, true);
      at += 2;
    },
    u32: (value) => {
      view.setUint32(at, value, true);
      at += 4;
    },
  });
  return bytes;
}
