import { Corner, Frame, inCorner, type Line } from "./diagram-kit.tsx";

/** Seen from the end, the leaves up on their arms. */
const atEnd: Readonly<Record<string, Line>> = {
  width: [88, 14, 212, 14],
  leaf: [14, 14, 88, 14],
  height: [300, 26, 300, 150],
  "top-thickness": [6, 26, 6, 33],
  "side-overhang": [88, 52, 98, 52],
  leg: [98, 66, 114, 66],
  foot: [98, 158, 107, 158],
  "taper-start": [124, 60, 124, 70],
  "rail-width": [150, 33, 150, 60],
  "arm-height": [38, 33, 38, 44],
};

/** From above, the leaves up; lengths lie across. */
const fromAbove: Readonly<Record<string, Line>> = {
  length: [330, 160, 490, 160],
  "end-overhang": [330, 85, 344, 85],
  "widest-strip": [412, 59, 412, 72],
};

/** Across the joint, level; gaps are drawn wider than any maker leaves them. */
const inJoint: Readonly<Record<string, Line>> = {
  "set-out": [381, 32, 388, 32],
  crown: [398, 46, 398, 51],
  "pin-out": [381, 126, 391, 126],
  bevel: [422, 110, 431, 110],
};

/** An arm in its rail, from above; it swings out to the front, which is below. */
const atArm: Readonly<Record<string, Line>> = {
  "arm-reach": [405, 102, 475, 102],
  "arm-tail": [350, 46, 405, 46],
  "arm-angle": [445, 60, 475, 90],
};

/** What stands beside the elevation: whatever shows the dimension that is meant. */
const views = [
  { lines: inCorner, View: TableCorner },
  { lines: inJoint, View: JointSection },
  { lines: atArm, View: Arm },
  { lines: fromAbove, View: Plan },
] as const;

type Props = {
  readonly dimension: string | undefined;
  readonly texts: Readonly<Record<string, string>>;
};

export function DropLeafDiagram({ dimension = "", texts }: Props) {
  const { lines, View } = views.find((one) => Object.hasOwn(one.lines, dimension)) ?? views[3];
  return (
    <Frame meant={atEnd[dimension] ?? lines[dimension]}>
      <EndElevation texts={texts} />
      <View texts={texts} />
    </Frame>
  );
}

type View = Pick<Props, "texts">;

function EndElevation({ texts }: View) {
  const isTapered = texts["leg-form"] !== "square";
  const hasTwo = texts.leaves !== "one";
  return (
    <>
      <g className="diagram-wood">
        <path d="M52 33H104V44H52Z" />
        {hasTwo && <path d="M248 33H196V44H248Z" />}
        <path d="M88 26H212V33H88Z" />
        <path d="M14 26H88V33H14Z" />
        {hasTwo && <path d="M212 26H286V33H212Z" />}
        <path d="M114 33H186V60H114Z" />
        <path d={isTapered ? "M98 33H114V70L107 150H98Z" : "M98 33H114V150H98Z"} />
        <path d={isTapered ? "M202 33H186V70L193 150H202Z" : "M202 33H186V150H202Z"} />
      </g>
      <g className="diagram-hidden">
        <path d="M91 32V106H84V32" />
        {hasTwo && <path d="M209 32V106H216V32" />}
      </g>
    </>
  );
}

function Plan({ texts }: View) {
  const hasTwo = texts.leaves !== "one";
  return (
    <>
      <g className="diagram-wood">
        {hasTwo && <path d="M330 21H490V59H330Z" />}
        <path d="M330 111H490V149H330Z" />
        <path d="M330 59H490V111H330Z" />
        <path d="M330 72H490M330 85H490M330 98H490" />
      </g>
      <g className="diagram-hidden">
        <path d="M344 63H354V73H344ZM466 63H476V73H466ZM344 97H354V107H344ZM466 97H476V107H466Z" />
      </g>
    </>
  );
}

function TableCorner({ texts }: View) {
  return <Corner isMitred={texts.tips === "mitred"} />;
}

function JointSection({ texts }: View) {
  const isRule = texts.joint !== "square edges";
  return (
    <>
      <g className="diagram-wood">
        <path
          d={isRule ? "M312 41H381V51A49 49 0 0 1 429.3 92L421 100H312Z" : "M312 41H381V100H312Z"}
        />
        <path d={isRule ? "M498 41H388V46A54 54 0 0 1 442 100H498Z" : "M498 41H388V100H498Z"} />
        <path
          d={
            isRule
              ? "M346 100H391V104H346ZM391 100H476V104H391Z"
              : "M346 100H384V104H346ZM384 100H422V104H384Z"
          }
        />
        <circle cx={isRule ? 391 : 384.5} cy={isRule ? 98 : 102} r={4.5} />
      </g>
      <g className="diagram-hidden">
        <path d={isRule ? "M381 51V134M391 98V134" : "M384.5 106V134"} />
      </g>
    </>
  );
}

function Arm({ texts }: View) {
  const isMitred = texts["arm-ends"] !== "square";
  return (
    <>
      <g className="diagram-wood">
        <path d="M312 60H500V90H312Z" />
        <path d={isMitred ? "M350 60H445L475 90H380Z" : "M350 60H475V90H350Z"} />
        <circle cx={405} cy={75} r={3} />
      </g>
      <g className="diagram-hidden">
        <path d={isMitred ? "M420 20V115L390 145V50Z" : "M420 20V145H390V20Z"} />
      </g>
    </>
  );
}
