import { ask, optionally } from "../../asking/index.ts";
import { equilibriumMoisture, humidityFor } from "../../wood/index.ts";
import { Problem } from "../../worked/index.ts";
import { topic } from "../topic.ts";

export const emc = topic({
  name: "emc",
  title: "Moisture in wood",
  tells: "the moisture content wood settles at in a room, or the air that keeps it where it is",
  asks: {
    temperature: ask.temperature("temperature of the air", {
      least: -20,
      most: 99,
      example: { inch: "70 F", mm: "21 C" },
    }),
    humidity: optionally(
      ask.humidity("relative humidity", { least: 1, most: 99, example: "45 %" }),
    ),
    moisture: optionally(
      ask.moisture("moisture content of the wood, to get the humidity instead", {
        least: 0,
        most: 30,
        example: "8 %",
      }),
    ),
  },
  opensWith: ["humidity"],
  answer({ temperature, humidity, moisture }) {
    if (humidity === undefined && moisture === undefined) {
      throw new Problem(
        "missing",
        "humidity, moisture",
        "Neither the humidity nor the moisture content is given.",
        "Give the humidity, such as 45 %, or the moisture content, such as 8 %.",
      );
    }
    const results = [
      ...(humidity
        ? [{ name: "moisture", worked: equilibriumMoisture(temperature, humidity) }]
        : []),
      ...(moisture ? [{ name: "humidity", worked: humidityFor(temperature, moisture) }] : []),
    ];
    return {
      results,
      remarks: [
        "Wood that is drying stays a point or so wetter than this, wood that is gaining a little drier. Thin stock gets there in weeks, thick stock in months.",
      ],
    };
  },
});
