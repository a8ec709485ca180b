/** What has to be said before anybody cuts. */
export function Cautions() {
  return (
    <details class="cautions">
      <summary>Before you cut: measure the bars on the sheet, protect yourself, mind what it carries</summary>
      <p>
        Print at 100 % (actual size), one-sided, and measure the bars. Wear eye, ear, hand and lung
        protection; keep hot work away from what burns; zinc and plating give off poisonous fume; vent sealed
        tube before welding; cut edges are sharp. What carries people or loads (cages, trailers, pressure,
        lifting) follows the governing rules and local code, and is designed and welded by those licensed for
        it: a paper template proves neither strength nor weld.
      </p>
    </details>
  );
}
