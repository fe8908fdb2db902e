import { useMemo } from "react";
import { encode } from "uqr";

/** A square code, drawn so that a scanner that types finds plain digits. Two modules of quiet edge. */
export function Code({ text, size }: { readonly text: string; readonly size: string }) {
  const path = useMemo(() => {
    const { data } = encode(text, { ecc: "M", border: 2 });
    return {
      side_n: data.length,
      d: data.flatMap((row, y) => row.flatMap((dark, x) => (dark ? [`M${x} ${y}h1v1h-1z`] : []))).join(""),
    };
  }, [text]);
  return (
    <svg
      width={size}
      height={size}
      viewBox={`0 0 ${path.side_n} ${path.side_n}`}
      shapeRendering="crispEdges"
      role="img"
      aria-label={text}
      style={{ background: "#fff", flex: "none" }}
    >
      <path d={path.d} fill="#000" />
    </svg>
  );
}
