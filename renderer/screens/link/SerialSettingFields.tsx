import type { SerialSetting } from "../../../app/contract/linkViews.ts";
import { SelectField } from "../../ui/field/SelectField.tsx";
import { useWords } from "../../words/SpeechContext.tsx";
import { linkTexts } from "./texts.ts";

const bauds = [1200, 2400, 4800, 9600, 19_200, 38_400, 57_600, 115_200, 230_400, 460_800, 921_600];
const plain = (values: readonly (number | string)[]) =>
  values.map((value) => ({ value: String(value), label: String(value) }));

/** A port's setting by hand, for who knows it. */
export function SerialSettingFields({
  setting,
  onSetting,
}: {
  readonly setting: SerialSetting;
  readonly onSetting: (setting: SerialSetting) => void;
}) {
  const words = useWords(linkTexts);
  return (
    <div className="fields">
      <SelectField
        label={words.baud}
        value={String(setting.baud)}
        options={plain(bauds)}
        onChoose={(baud) => onSetting({ ...setting, baud: Number(baud) })}
      />
      <SelectField
        label={words.dataBits}
        value={String(setting.dataBits)}
        options={plain([7, 8])}
        onChoose={(bits) => onSetting({ ...setting, dataBits: bits === "7" ? 7 : 8 })}
      />
      <SelectField
        label={words.parity}
        value={setting.parity}
        options={[
          { value: "none", label: words.parityNone },
          { value: "even", label: words.parityEven },
          { value: "odd", label: words.parityOdd },
        ]}
        onChoose={(parity) => onSetting({ ...setting, parity })}
      />
      <SelectField
        label={words.stopBits}
        value={String(setting.stopBits)}
        options={plain([1, 2])}
        onChoose={(bits) => onSetting({ ...setting, stopBits: bits === "2" ? 2 : 1 })}
      />
    </div>
  );
}
