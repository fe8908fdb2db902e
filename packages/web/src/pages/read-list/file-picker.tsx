import { useRef } from "react";
import { Key } from "../../parts/key.tsx";

interface FilePickerProps {
  readonly said: string;
  readonly onFile: (file: File) => void;
  readonly accept?: string;
  readonly camera?: boolean;
  /** Several at once; `onFile` is called for each. */
  readonly many?: boolean;
}

/** A key that opens the system's own choice of files; the bare input would be too small for a thumb. */
export function FilePicker({
  said,
  onFile,
  accept = ".csv,.tsv,.txt,text/csv,text/plain",
  camera,
  many = false,
}: FilePickerProps) {
  const input = useRef<HTMLInputElement>(null);
  return (
    <>
      <Key onPress={() => input.current?.click()}>{said}</Key>
      <input
        ref={input}
        type="file"
        hidden
        accept={accept}
        capture={camera ? "environment" : undefined}
        multiple={many}
        aria-label={said}
        onChange={(event) => {
          const files = [...(event.target.files ?? [])];
          event.target.value = "";
          for (const file of files) onFile(file);
        }}
      />
    </>
  );
}
