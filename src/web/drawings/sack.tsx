// A tied sack: scraps set aside until they were tested. Dashed, as everything that waits.

export function Sack(props: {
  readonly x: number;
  readonly floorY: number;
  readonly width: number;
  readonly height: number;
}) {
  const path = () => {
    const { x, floorY, width: w, height: h } = props;
    const neck = floorY - h * 0.84;
    return (
      `M${x + w * 0.03} ${floorY}C${x - w * 0.07} ${floorY - h * 0.5} ${x - w * 0.02} ${neck + h * 0.1} ${x + w * 0.33} ${neck}` +
      `L${x + w * 0.24} ${floorY - h}H${x + w * 0.76}L${x + w * 0.67} ${neck}` +
      `C${x + w * 1.02} ${neck + h * 0.1} ${x + w * 1.07} ${floorY - h * 0.5} ${x + w * 0.97} ${floorY}Z`
    );
  };
  return (
    <>
      <path class="bare" d={path()} fill="url(#l-aside)" />
      <path class="edge waiting" d={path()} />
    </>
  );
}
