// Generated from schemas/source/ by `npm run generate`; do not edit.
import type { FieldInfo, RecordKind } from './field-info.ts'

export const schemas: Readonly<Partial<Record<RecordKind, FieldInfo>>> = {
 "panel": {
  "key": "",
  "title": "Panel record",
  "description": "One panel's datasheet, typed as printed.",
  "type": "group",
  "fields": [
   {
    "key": "format",
    "title": "format",
    "description": "The version of this record format.",
    "required": true,
    "examples": [
     "1"
    ],
    "type": "integer"
   },
   {
    "key": "name",
    "title": "name",
    "description": "The model as printed.",
    "required": true,
    "examples": [
     "Tern 110"
    ],
    "type": "text"
   },
   {
    "key": "maker",
    "title": "maker",
    "description": "Who makes it.",
    "examples": [
     "Example Panel Works"
    ],
    "type": "text"
   },
   {
    "key": "family",
    "title": "family",
    "description": "The product family, when the sheet covers several power classes.",
    "examples": [
     "Tern"
    ],
    "type": "text"
   },
   {
    "key": "construction",
    "title": "construction",
    "description": "How the panel is built.",
    "type": "choice",
    "choices": [
     {
      "value": "flexible",
      "description": "a thin laminate without glass, to be bonded or laced down"
     },
     {
      "value": "rigid",
      "description": "a framed or frameless glass panel"
     },
     {
      "value": "folding",
      "description": "a portable panel that folds"
     }
    ]
   },
   {
    "key": "cells",
    "title": "cells",
    "description": "The solar cells.",
    "type": "group",
    "fields": [
     {
      "key": "technology",
      "title": "cell technology",
      "description": "The kind of cell, as far as the sheet says.",
      "type": "choice",
      "choices": [
       {
        "value": "mono",
        "description": "monocrystalline silicon, kind not given"
       },
       {
        "value": "perc",
        "description": "monocrystalline PERC"
       },
       {
        "value": "topcon",
        "description": "TOPCon"
       },
       {
        "value": "hjt",
        "description": "silicon heterojunction"
       },
       {
        "value": "back-contact",
        "description": "back-contact silicon"
       },
       {
        "value": "poly",
        "description": "polycrystalline silicon"
       },
       {
        "value": "cigs",
        "description": "CIGS or CIS thin film"
       },
       {
        "value": "cdte",
        "description": "cadmium telluride thin film"
       },
       {
        "value": "a-si",
        "description": "amorphous silicon, one or more junctions"
       },
       {
        "value": "gaas",
        "description": "gallium arsenide thin film"
       },
       {
        "value": "thin-film",
        "description": "thin film, kind not given"
       },
       {
        "value": "perovskite",
        "description": "perovskite"
       },
       {
        "value": "tandem",
        "description": "perovskite on silicon"
       },
       {
        "value": "other",
        "description": "anything else"
       }
      ]
     },
     {
      "key": "in_series",
      "title": "cells in series",
      "description": "How many full cells are in series. A half-cut module of 120 pieces has 60.",
      "examples": [
       "36"
      ],
      "symbol": "cells in series",
      "costs": "voc_per_cell",
      "type": "integer"
     },
     {
      "key": "parallel_strings",
      "title": "parallel cell strings",
      "description": "How many strings of cells are in parallel inside the panel.",
      "examples": [
       "1"
      ],
      "type": "integer"
     },
     {
      "key": "bypass_diodes",
      "title": "bypass diodes",
      "description": "How many bypass diodes the panel carries.",
      "examples": [
       "2"
      ],
      "type": "integer"
     }
    ]
   },
   {
    "key": "bifacial",
    "title": "bifacial",
    "description": "Whether the rear face makes power too.",
    "examples": [
     "false"
    ],
    "type": "boolean"
   },
   {
    "key": "surface",
    "title": "front surface",
    "description": "What covers the cells.",
    "type": "choice",
    "choices": [
     {
      "value": "ETFE",
      "description": "fluoropolymer film"
     },
     {
      "value": "PET",
      "description": "polyester film"
     },
     {
      "value": "glass",
      "description": "tempered glass"
     },
     {
      "value": "other",
      "description": "anything else"
     }
    ]
   },
   {
    "key": "stc",
    "title": "standard test conditions",
    "description": "Ratings at 1000 W/m2, AM1.5 and 25 °C cell temperature.",
    "required": true,
    "type": "group",
    "fields": [
     {
      "key": "pmax",
      "title": "maximum power",
      "description": "Rated power at the maximum power point.",
      "required": true,
      "examples": [
       "110 W"
      ],
      "symbol": "Pmax",
      "type": "quantity",
      "quantity": "power",
      "unit": "W"
     },
     {
      "key": "tolerance",
      "title": "power tolerance",
      "description": "How far the real power may differ from the rated one.",
      "examples": [
       "0/+5 %"
      ],
      "symbol": "tolerance",
      "type": "quantity",
      "quantity": "tolerance",
      "unit": "%"
     },
     {
      "key": "vmp",
      "title": "voltage at maximum power",
      "description": "Voltage at the maximum power point.",
      "required": true,
      "examples": [
       "18.6 V"
      ],
      "symbol": "Vmp",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     },
     {
      "key": "imp",
      "title": "current at maximum power",
      "description": "Current at the maximum power point.",
      "required": true,
      "examples": [
       "5.92 A"
      ],
      "symbol": "Imp",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "voc",
      "title": "open-circuit voltage",
      "description": "Voltage with nothing connected: the highest that the panel reaches at this temperature.",
      "required": true,
      "examples": [
       "22.1 V"
      ],
      "symbol": "Voc",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     },
     {
      "key": "isc",
      "title": "short-circuit current",
      "description": "Current with the terminals joined.",
      "required": true,
      "examples": [
       "6.31 A"
      ],
      "symbol": "Isc",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "efficiency",
      "title": "efficiency as printed",
      "description": "Efficiency as the sheet prints it; compare with the derived one, which is over the whole area.",
      "examples": [
       "17.1 %"
      ],
      "symbol": "efficiency",
      "type": "quantity",
      "quantity": "ratio",
      "unit": "%"
     }
    ]
   },
   {
    "key": "temperature_coefficients",
    "title": "temperature coefficients",
    "description": "Change per degree of cell temperature, relative or absolute.",
    "type": "group",
    "fields": [
     {
      "key": "pmax",
      "title": "coefficient of Pmax",
      "description": "Change of the maximum power per degree; negative.",
      "examples": [
       "-0.38 %/°C"
      ],
      "symbol": "Pmax coefficient",
      "costs": "pmax_hot",
      "type": "quantity",
      "quantity": "power-coefficient",
      "unit": "%/°C"
     },
     {
      "key": "voc",
      "title": "coefficient of Voc",
      "description": "Change of the open-circuit voltage per degree; negative.",
      "examples": [
       "-0.29 %/°C"
      ],
      "symbol": "Voc coefficient",
      "costs": "voc_cold",
      "type": "quantity",
      "quantity": "voltage-coefficient",
      "unit": "%/°C"
     },
     {
      "key": "isc",
      "title": "coefficient of Isc",
      "description": "Change of the short-circuit current per degree; usually slightly positive.",
      "examples": [
       "0.05 %/°C"
      ],
      "symbol": "Isc coefficient",
      "type": "quantity",
      "quantity": "current-coefficient",
      "unit": "%/°C"
     },
     {
      "key": "vmp",
      "title": "coefficient of Vmp",
      "description": "Change of the voltage at maximum power per degree.",
      "examples": [
       "-0.39 %/°C"
      ],
      "symbol": "Vmp coefficient",
      "type": "quantity",
      "quantity": "voltage-coefficient",
      "unit": "%/°C"
     },
     {
      "key": "imp",
      "title": "coefficient of Imp",
      "description": "Change of the current at maximum power per degree.",
      "examples": [
       "0.01 %/°C"
      ],
      "symbol": "Imp coefficient",
      "type": "quantity",
      "quantity": "current-coefficient",
      "unit": "%/°C"
     }
    ]
   },
   {
    "key": "noct",
    "title": "nominal operating cell temperature",
    "description": "Ratings at 800 W/m2, 20 °C air and 1 m/s wind (NOCT or NMOT).",
    "type": "group",
    "fields": [
     {
      "key": "temperature",
      "title": "NOCT",
      "description": "Cell temperature at these conditions.",
      "examples": [
       "46 °C"
      ],
      "symbol": "NOCT",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     },
     {
      "key": "pmax",
      "title": "power at NOCT",
      "description": "Maximum power at NOCT conditions.",
      "examples": [
       "81 W"
      ],
      "symbol": "Pmax at NOCT",
      "type": "quantity",
      "quantity": "power",
      "unit": "W"
     },
     {
      "key": "vmp",
      "title": "Vmp at NOCT",
      "description": "Voltage at maximum power at NOCT conditions.",
      "examples": [
       "17.2 V"
      ],
      "symbol": "Vmp at NOCT",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     },
     {
      "key": "imp",
      "title": "Imp at NOCT",
      "description": "Current at maximum power at NOCT conditions.",
      "examples": [
       "4.71 A"
      ],
      "symbol": "Imp at NOCT",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "voc",
      "title": "Voc at NOCT",
      "description": "Open-circuit voltage at NOCT conditions.",
      "examples": [
       "20.6 V"
      ],
      "symbol": "Voc at NOCT",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     },
     {
      "key": "isc",
      "title": "Isc at NOCT",
      "description": "Short-circuit current at NOCT conditions.",
      "examples": [
       "5.10 A"
      ],
      "symbol": "Isc at NOCT",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     }
    ]
   },
   {
    "key": "size",
    "title": "size",
    "description": "Outer dimensions, frame and border included.",
    "required": true,
    "type": "group",
    "fields": [
     {
      "key": "length",
      "title": "length",
      "description": "The longer side.",
      "required": true,
      "examples": [
       "1190 mm"
      ],
      "symbol": "length",
      "type": "quantity",
      "quantity": "length",
      "unit": "mm"
     },
     {
      "key": "width",
      "title": "width",
      "description": "The shorter side.",
      "required": true,
      "examples": [
       "540 mm"
      ],
      "symbol": "width",
      "type": "quantity",
      "quantity": "length",
      "unit": "mm"
     },
     {
      "key": "thickness",
      "title": "thickness",
      "description": "Without the junction box.",
      "examples": [
       "2.5 mm"
      ],
      "symbol": "thickness",
      "type": "quantity",
      "quantity": "length",
      "unit": "mm"
     }
    ]
   },
   {
    "key": "weight",
    "title": "weight",
    "description": "Weight of the panel.",
    "examples": [
     "2.2 kg"
    ],
    "symbol": "weight",
    "costs": "power_per_weight",
    "type": "quantity",
    "quantity": "mass",
    "unit": "kg"
   },
   {
    "key": "mounting_frame",
    "title": "mounting frame",
    "description": "What a frame or brackets add on this customer's boat, van or cabin.",
    "type": "group",
    "fields": [
     {
      "key": "weight",
      "title": "frame weight",
      "description": "Weight of frame and brackets.",
      "examples": [
       "1.4 kg"
      ],
      "symbol": "frame weight",
      "type": "quantity",
      "quantity": "mass",
      "unit": "kg"
     }
    ]
   },
   {
    "key": "limits",
    "title": "limits",
    "description": "What the maker permits.",
    "type": "group",
    "fields": [
     {
      "key": "system_voltage",
      "title": "maximum system voltage",
      "description": "Highest voltage of a string of these panels.",
      "examples": [
       "600 V"
      ],
      "symbol": "system voltage",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     },
     {
      "key": "series_fuse",
      "title": "maximum series fuse",
      "description": "Largest fuse that protects the panel against reverse current.",
      "examples": [
       "15 A"
      ],
      "symbol": "series fuse",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "bend",
      "title": "bend limit",
      "description": "Largest bend over the panel's length.",
      "examples": [
       "30 deg"
      ],
      "symbol": "bend limit",
      "type": "quantity",
      "quantity": "angle",
      "unit": "deg"
     },
     {
      "key": "bend_radius",
      "title": "bend radius",
      "description": "Smallest radius that the panel may be bent to, where the sheet gives that instead of an angle.",
      "examples": [
       "800 mm"
      ],
      "symbol": "bend radius",
      "type": "quantity",
      "quantity": "length",
      "unit": "mm"
     },
     {
      "key": "operating_temperature",
      "title": "operating temperature",
      "description": "Cell temperatures that the maker permits.",
      "examples": [
       "-40..85 °C"
      ],
      "symbol": "operating temperature",
      "type": "quantity",
      "quantity": "temperature-range",
      "unit": "°C"
     }
    ]
   },
   {
    "key": "price",
    "title": "price",
    "description": "What it costs.",
    "type": "group",
    "fields": [
     {
      "key": "amount",
      "title": "price",
      "description": "Amount and currency.",
      "examples": [
       "289 USD"
      ],
      "symbol": "price",
      "costs": "price_per_watt",
      "type": "quantity",
      "quantity": "money"
     },
     {
      "key": "quoted_on",
      "title": "quoted on",
      "description": "When the price was quoted.",
      "examples": [
       "2026-10-04"
      ],
      "type": "date"
     },
     {
      "key": "from",
      "title": "seller",
      "description": "Who quoted it.",
      "examples": [
       "Example Chandlery"
      ],
      "type": "text"
     }
    ]
   },
   {
    "key": "warranty",
    "title": "warranty",
    "description": "What the maker promises, and what voids it.",
    "type": "group",
    "fields": [
     {
      "key": "output",
      "title": "output warranty",
      "description": "Steps of guaranteed power.",
      "type": "list",
      "item": {
       "key": "",
       "title": "output step",
       "description": "A guaranteed share of the rated power up to a year.",
       "type": "group",
       "fields": [
        {
         "key": "years",
         "title": "years",
         "description": "Up to which year.",
         "required": true,
         "examples": [
          "5"
         ],
         "symbol": "years",
         "type": "number"
        },
        {
         "key": "at_least",
         "title": "guaranteed share",
         "description": "Share of the rated power that is guaranteed until then.",
         "required": true,
         "examples": [
          "80 %"
         ],
         "symbol": "guaranteed share",
         "type": "quantity",
         "quantity": "ratio",
         "unit": "%"
        }
       ]
      }
     },
     {
      "key": "workmanship",
      "title": "workmanship warranty",
      "description": "Warranty on the product itself.",
      "type": "group",
      "fields": [
       {
        "key": "years",
        "title": "years",
        "description": "Up to which year.",
        "examples": [
         "2"
        ],
        "symbol": "years",
        "type": "number"
       }
      ]
     },
     {
      "key": "exclusions",
      "title": "exclusions",
      "description": "What voids the warranty, in short words.",
      "type": "list",
      "item": {
       "key": "",
       "title": "exclusion",
       "description": "One exclusion.",
       "examples": [
        "uv",
        "foot traffic",
        "salt water",
        "curved mounting",
        "mobile use"
       ],
       "type": "text"
      }
     }
    ]
   },
   {
    "key": "certificates",
    "title": "certificates",
    "description": "Standards that the panel is certified to.",
    "type": "list",
    "item": {
     "key": "",
     "title": "certificate",
     "description": "One standard.",
     "examples": [
      "IEC 61215",
      "IEC 61730"
     ],
     "type": "text"
    }
   },
   {
    "key": "datasheet",
    "title": "datasheet",
    "description": "Where the numbers were read.",
    "type": "group",
    "fields": [
     {
      "key": "source",
      "title": "source",
      "description": "Path or address of the datasheet.",
      "examples": [
       "sheets/tern-110.pdf"
      ],
      "type": "text"
     },
     {
      "key": "page",
      "title": "page",
      "description": "The page with the table.",
      "examples": [
       "2"
      ],
      "type": "integer"
     },
     {
      "key": "model",
      "title": "model on the sheet",
      "description": "The heading of the column or row that was typed, where the sheet has several models.",
      "examples": [
       "Tern 110"
      ],
      "type": "text"
     },
     {
      "key": "sha256",
      "title": "fingerprint of the sheet",
      "description": "SHA-256 of the file, which notices a sheet that was replaced.",
      "examples": [
       "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08"
      ],
      "type": "text"
     },
     {
      "key": "revision",
      "title": "revision",
      "description": "Revision printed on the sheet.",
      "examples": [
       "B"
      ],
      "type": "text"
     },
     {
      "key": "typed_by",
      "title": "typed by",
      "description": "Initials of the person who typed the record.",
      "examples": [
       "ab"
      ],
      "type": "text"
     },
     {
      "key": "typed_on",
      "title": "typed on",
      "description": "When it was typed.",
      "examples": [
       "2026-10-05"
      ],
      "type": "date"
     }
    ]
   },
   {
    "key": "notes",
    "title": "notes",
    "description": "Anything else worth knowing.",
    "examples": [
     "Junction box on the upper face."
    ],
    "type": "text"
   },
   {
    "key": "accepted",
    "title": "accepted findings",
    "description": "Findings that a person has looked at and lets stand, each with the reason. In YAML a comment `# accept rule-id: reason` on the line does the same.",
    "type": "list",
    "item": {
     "key": "",
     "title": "accepted finding",
     "description": "One finding that stands.",
     "type": "group",
     "fields": [
      {
       "key": "rule",
       "title": "rule",
       "description": "The id of the rule.",
       "required": true,
       "examples": [
        "efficiency-printed"
       ],
       "type": "text"
      },
      {
       "key": "field",
       "title": "field",
       "description": "JSON pointer of the field.",
       "required": true,
       "examples": [
        "/stc/efficiency"
       ],
       "type": "text"
      },
      {
       "key": "because",
       "title": "reason",
       "description": "Why the value is right all the same.",
       "required": true,
       "examples": [
        "cell area, not module area"
       ],
       "type": "text"
      }
     ]
    }
   }
  ]
 },
 "controller": {
  "key": "",
  "title": "Controller record",
  "description": "One charge controller's datasheet, typed as printed.",
  "type": "group",
  "fields": [
   {
    "key": "format",
    "title": "format",
    "description": "The version of this record format.",
    "required": true,
    "examples": [
     "1"
    ],
    "type": "integer"
   },
   {
    "key": "name",
    "title": "name",
    "description": "The model as printed.",
    "required": true,
    "examples": [
     "Example MPPT 100/30"
    ],
    "type": "text"
   },
   {
    "key": "maker",
    "title": "maker",
    "description": "Who makes it.",
    "examples": [
     "Example Controls"
    ],
    "type": "text"
   },
   {
    "key": "type",
    "title": "type",
    "description": "How it charges.",
    "required": true,
    "type": "choice",
    "choices": [
     {
      "value": "mppt",
      "description": "tracks the maximum power point and converts the voltage down"
     },
     {
      "value": "pwm",
      "description": "joins the panel to the battery and switches, so the panel works at battery voltage"
     }
    ]
   },
   {
    "key": "input",
    "title": "input",
    "description": "The side of the panels.",
    "required": true,
    "type": "group",
    "fields": [
     {
      "key": "max_voltage",
      "title": "maximum input voltage",
      "description": "Open-circuit voltage that the input survives. Above it the controller is damaged.",
      "required": true,
      "examples": [
       "100 V"
      ],
      "symbol": "maximum input voltage",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     },
     {
      "key": "max_short_circuit_current",
      "title": "maximum short-circuit current",
      "description": "Largest short-circuit current of the array.",
      "examples": [
       "35 A"
      ],
      "symbol": "maximum short-circuit current",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "max_power",
      "title": "maximum array power",
      "description": "Array power that it can use at the lowest of its battery voltages; more is not taken.",
      "examples": [
       "440 W"
      ],
      "symbol": "maximum array power",
      "type": "quantity",
      "quantity": "power",
      "unit": "W"
     },
     {
      "key": "above_battery",
      "title": "voltage above battery",
      "description": "How far the panel voltage must be above the battery's before charging starts.",
      "examples": [
       "5 V"
      ],
      "symbol": "voltage above battery",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     }
    ]
   },
   {
    "key": "output",
    "title": "output",
    "description": "The side of the battery.",
    "required": true,
    "type": "group",
    "fields": [
     {
      "key": "max_current",
      "title": "maximum charge current",
      "description": "Largest current into the battery.",
      "required": true,
      "examples": [
       "30 A"
      ],
      "symbol": "maximum charge current",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "battery_voltages",
      "title": "battery voltages",
      "description": "Nominal battery voltages that it is made for.",
      "type": "list",
      "item": {
       "key": "",
       "title": "battery voltage",
       "description": "A nominal battery voltage.",
       "examples": [
        "12 V"
       ],
       "symbol": "battery voltage",
       "type": "quantity",
       "quantity": "voltage",
       "unit": "V"
      }
     }
    ]
   },
   {
    "key": "efficiency",
    "title": "efficiency",
    "description": "Power out over power in near full load.",
    "examples": [
     "97 %"
    ],
    "symbol": "efficiency",
    "type": "quantity",
    "quantity": "ratio",
    "unit": "%"
   },
   {
    "key": "self_consumption",
    "title": "own consumption",
    "description": "What it draws from the battery day and night.",
    "examples": [
     "20 mA"
    ],
    "symbol": "own consumption",
    "type": "quantity",
    "quantity": "current",
    "unit": "mA"
   },
   {
    "key": "size",
    "title": "size",
    "description": "Outer dimensions.",
    "type": "group",
    "fields": [
     {
      "key": "length",
      "title": "length",
      "description": "Outer length.",
      "examples": [
       "190 mm"
      ],
      "symbol": "length",
      "type": "quantity",
      "quantity": "length",
      "unit": "mm"
     },
     {
      "key": "width",
      "title": "width",
      "description": "Outer width.",
      "examples": [
       "130 mm"
      ],
      "symbol": "width",
      "type": "quantity",
      "quantity": "length",
      "unit": "mm"
     },
     {
      "key": "depth",
      "title": "depth",
      "description": "Outer depth.",
      "examples": [
       "70 mm"
      ],
      "symbol": "depth",
      "type": "quantity",
      "quantity": "length",
      "unit": "mm"
     }
    ]
   },
   {
    "key": "weight",
    "title": "weight",
    "description": "Weight of the controller.",
    "examples": [
     "1.3 kg"
    ],
    "symbol": "weight",
    "type": "quantity",
    "quantity": "mass",
    "unit": "kg"
   },
   {
    "key": "price",
    "title": "price",
    "description": "What it costs.",
    "type": "group",
    "fields": [
     {
      "key": "amount",
      "title": "price",
      "description": "Amount and currency.",
      "examples": [
       "289 USD"
      ],
      "symbol": "price",
      "type": "quantity",
      "quantity": "money"
     },
     {
      "key": "quoted_on",
      "title": "quoted on",
      "description": "When the price was quoted.",
      "examples": [
       "2026-10-04"
      ],
      "type": "date"
     },
     {
      "key": "from",
      "title": "seller",
      "description": "Who quoted it.",
      "examples": [
       "Example Chandlery"
      ],
      "type": "text"
     }
    ]
   },
   {
    "key": "datasheet",
    "title": "datasheet",
    "description": "Where the numbers were read.",
    "type": "group",
    "fields": [
     {
      "key": "source",
      "title": "source",
      "description": "Path or address of the datasheet.",
      "examples": [
       "sheets/example.pdf"
      ],
      "type": "text"
     },
     {
      "key": "page",
      "title": "page",
      "description": "The page with the table.",
      "examples": [
       "2"
      ],
      "type": "integer"
     },
     {
      "key": "revision",
      "title": "revision",
      "description": "Revision printed on the sheet.",
      "examples": [
       "B"
      ],
      "type": "text"
     },
     {
      "key": "typed_by",
      "title": "typed by",
      "description": "Initials of the person who typed the record.",
      "examples": [
       "ab"
      ],
      "type": "text"
     },
     {
      "key": "typed_on",
      "title": "typed on",
      "description": "When it was typed.",
      "examples": [
       "2026-10-05"
      ],
      "type": "date"
     }
    ]
   },
   {
    "key": "notes",
    "title": "notes",
    "description": "Anything else worth knowing.",
    "examples": [
     "Settings by switch."
    ],
    "type": "text"
   },
   {
    "key": "accepted",
    "title": "accepted findings",
    "description": "Findings that a person has looked at and lets stand, each with the reason. In YAML a comment `# accept rule-id: reason` on the line does the same.",
    "type": "list",
    "item": {
     "key": "",
     "title": "accepted finding",
     "description": "One finding that stands.",
     "type": "group",
     "fields": [
      {
       "key": "rule",
       "title": "rule",
       "description": "The id of the rule.",
       "required": true,
       "examples": [
        "controller-ratings-disagree"
       ],
       "type": "text"
      },
      {
       "key": "field",
       "title": "field",
       "description": "JSON pointer of the field.",
       "required": true,
       "examples": [
        "/input/max_power"
       ],
       "type": "text"
      },
      {
       "key": "because",
       "title": "reason",
       "description": "Why the value is right all the same.",
       "required": true,
       "examples": [
        "printed for the 24 V bank"
       ],
       "type": "text"
      }
     ]
    }
   }
  ]
 },
 "battery": {
  "key": "",
  "title": "Battery record",
  "description": "One battery's datasheet, typed as printed.",
  "type": "group",
  "fields": [
   {
    "key": "format",
    "title": "format",
    "description": "The version of this record format.",
    "required": true,
    "examples": [
     "1"
    ],
    "type": "integer"
   },
   {
    "key": "name",
    "title": "name",
    "description": "The model as printed.",
    "required": true,
    "examples": [
     "Example LFP 100"
    ],
    "type": "text"
   },
   {
    "key": "maker",
    "title": "maker",
    "description": "Who makes it.",
    "examples": [
     "Example Batteries"
    ],
    "type": "text"
   },
   {
    "key": "chemistry",
    "title": "chemistry",
    "description": "What it is made of.",
    "required": true,
    "type": "choice",
    "choices": [
     {
      "value": "flooded",
      "description": "lead-acid with liquid acid"
     },
     {
      "value": "agm",
      "description": "lead-acid, acid held in glass mat"
     },
     {
      "value": "gel",
      "description": "lead-acid, acid held in gel"
     },
     {
      "value": "lifepo4",
      "description": "lithium iron phosphate"
     },
     {
      "value": "nmc",
      "description": "lithium nickel manganese cobalt, or nickel cobalt aluminium"
     }
    ]
   },
   {
    "key": "nominal_voltage",
    "title": "nominal voltage",
    "description": "Nominal voltage of one battery.",
    "required": true,
    "examples": [
     "12.8 V"
    ],
    "symbol": "nominal voltage",
    "type": "quantity",
    "quantity": "voltage",
    "unit": "V"
   },
   {
    "key": "cells_in_series",
    "title": "cells in series",
    "description": "How many cells are in series inside.",
    "examples": [
     "4"
    ],
    "type": "integer"
   },
   {
    "key": "capacity",
    "title": "capacity",
    "description": "Charge that it holds.",
    "required": true,
    "type": "group",
    "fields": [
     {
      "key": "amount",
      "title": "capacity",
      "description": "Rated capacity.",
      "required": true,
      "examples": [
       "100 Ah"
      ],
      "symbol": "capacity",
      "type": "quantity",
      "quantity": "charge",
      "unit": "Ah"
     },
     {
      "key": "over",
      "title": "rated over",
      "description": "The time of the discharge that the capacity is rated for.",
      "examples": [
       "20 h"
      ],
      "symbol": "rated over",
      "type": "quantity",
      "quantity": "duration",
      "unit": "h"
     }
    ]
   },
   {
    "key": "energy",
    "title": "energy as printed",
    "description": "Energy as the sheet prints it.",
    "examples": [
     "1280 Wh"
    ],
    "symbol": "energy as printed",
    "type": "quantity",
    "quantity": "energy",
    "unit": "Wh"
   },
   {
    "key": "usable_depth",
    "title": "usable depth",
    "description": "Share of the capacity that may be used every day.",
    "examples": [
     "80 %"
    ],
    "symbol": "usable depth",
    "type": "quantity",
    "quantity": "ratio",
    "unit": "%"
   },
   {
    "key": "charge",
    "title": "charge",
    "description": "Limits and settings of charging.",
    "type": "group",
    "fields": [
     {
      "key": "max_current",
      "title": "maximum charge current",
      "description": "Largest charge current of one battery.",
      "examples": [
       "50 A"
      ],
      "symbol": "maximum charge current",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "voltage",
      "title": "charge voltage",
      "description": "Absorption or charge voltage of one battery.",
      "examples": [
       "14.2 V"
      ],
      "symbol": "charge voltage",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     },
     {
      "key": "float",
      "title": "float voltage",
      "description": "Voltage that it is held at when full.",
      "examples": [
       "13.5 V"
      ],
      "symbol": "float voltage",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     },
     {
      "key": "equalise",
      "title": "equalising voltage",
      "description": "Voltage of an equalising charge; leave it out where there is none.",
      "examples": [
       "15.5 V"
      ],
      "symbol": "equalising voltage",
      "type": "quantity",
      "quantity": "voltage",
      "unit": "V"
     },
     {
      "key": "temperature_compensation",
      "title": "temperature compensation",
      "description": "Change of the charge voltage per degree.",
      "examples": [
       "-24 mV/K"
      ],
      "symbol": "temperature compensation",
      "type": "quantity",
      "quantity": "voltage-coefficient",
      "unit": "mV/K"
     },
     {
      "key": "lowest_temperature",
      "title": "lowest charge temperature",
      "description": "Below this it must not be charged.",
      "examples": [
       "0 °C"
      ],
      "symbol": "lowest charge temperature",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     },
     {
      "key": "highest_temperature",
      "title": "highest charge temperature",
      "description": "Above this it must not be charged.",
      "examples": [
       "45 °C"
      ],
      "symbol": "highest charge temperature",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     },
     {
      "key": "low_temperature_cutoff",
      "title": "low-temperature cut-off",
      "description": "Whether its own management stops charging, or heats it, when it is too cold.",
      "examples": [
       "true"
      ],
      "type": "boolean"
     }
    ]
   },
   {
    "key": "discharge",
    "title": "discharge",
    "description": "Limits of discharging.",
    "type": "group",
    "fields": [
     {
      "key": "max_current",
      "title": "maximum discharge current",
      "description": "Largest lasting discharge current of one battery.",
      "examples": [
       "100 A"
      ],
      "symbol": "maximum discharge current",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "lowest_temperature",
      "title": "lowest discharge temperature",
      "description": "Below this it must not be discharged.",
      "examples": [
       "-20 °C"
      ],
      "symbol": "lowest discharge temperature",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     }
    ]
   },
   {
    "key": "round_trip_efficiency",
    "title": "round-trip efficiency",
    "description": "Energy out over energy in.",
    "examples": [
     "95 %"
    ],
    "symbol": "round-trip efficiency",
    "type": "quantity",
    "quantity": "ratio",
    "unit": "%"
   },
   {
    "key": "cycles",
    "title": "cycles",
    "description": "How many cycles the maker states at the usable depth.",
    "examples": [
     "3000"
    ],
    "type": "integer"
   },
   {
    "key": "weight",
    "title": "weight",
    "description": "Weight of one battery.",
    "examples": [
     "11 kg"
    ],
    "symbol": "weight",
    "type": "quantity",
    "quantity": "mass",
    "unit": "kg"
   },
   {
    "key": "price",
    "title": "price",
    "description": "What it costs.",
    "type": "group",
    "fields": [
     {
      "key": "amount",
      "title": "price",
      "description": "Amount and currency.",
      "examples": [
       "289 USD"
      ],
      "symbol": "price",
      "type": "quantity",
      "quantity": "money"
     },
     {
      "key": "quoted_on",
      "title": "quoted on",
      "description": "When the price was quoted.",
      "examples": [
       "2026-10-04"
      ],
      "type": "date"
     },
     {
      "key": "from",
      "title": "seller",
      "description": "Who quoted it.",
      "examples": [
       "Example Chandlery"
      ],
      "type": "text"
     }
    ]
   },
   {
    "key": "datasheet",
    "title": "datasheet",
    "description": "Where the numbers were read.",
    "type": "group",
    "fields": [
     {
      "key": "source",
      "title": "source",
      "description": "Path or address of the datasheet.",
      "examples": [
       "sheets/example.pdf"
      ],
      "type": "text"
     },
     {
      "key": "page",
      "title": "page",
      "description": "The page with the table.",
      "examples": [
       "2"
      ],
      "type": "integer"
     },
     {
      "key": "revision",
      "title": "revision",
      "description": "Revision printed on the sheet.",
      "examples": [
       "B"
      ],
      "type": "text"
     },
     {
      "key": "typed_by",
      "title": "typed by",
      "description": "Initials of the person who typed the record.",
      "examples": [
       "ab"
      ],
      "type": "text"
     },
     {
      "key": "typed_on",
      "title": "typed on",
      "description": "When it was typed.",
      "examples": [
       "2026-10-05"
      ],
      "type": "date"
     }
    ]
   },
   {
    "key": "notes",
    "title": "notes",
    "description": "Anything else worth knowing.",
    "examples": [
     "Group 31 case."
    ],
    "type": "text"
   },
   {
    "key": "accepted",
    "title": "accepted findings",
    "description": "Findings that a person has looked at and lets stand, each with the reason. In YAML a comment `# accept rule-id: reason` on the line does the same.",
    "type": "list",
    "item": {
     "key": "",
     "title": "accepted finding",
     "description": "One finding that stands.",
     "type": "group",
     "fields": [
      {
       "key": "rule",
       "title": "rule",
       "description": "The id of the rule.",
       "required": true,
       "examples": [
        "battery-energy-disagrees"
       ],
       "type": "text"
      },
      {
       "key": "field",
       "title": "field",
       "description": "JSON pointer of the field.",
       "required": true,
       "examples": [
        "/energy"
       ],
       "type": "text"
      },
      {
       "key": "because",
       "title": "reason",
       "description": "Why the value is right all the same.",
       "required": true,
       "examples": [
        "printed for the usable part"
       ],
       "type": "text"
      }
     ]
    }
   }
  ]
 },
 "climate": {
  "key": "",
  "title": "Climate record",
  "description": "Sun and temperature of one place, month by month.",
  "type": "group",
  "fields": [
   {
    "key": "format",
    "title": "format",
    "description": "The version of this record format.",
    "required": true,
    "examples": [
     "1"
    ],
    "type": "integer"
   },
   {
    "key": "name",
    "title": "name",
    "description": "The place.",
    "required": true,
    "examples": [
     "Example Bay"
    ],
    "type": "text"
   },
   {
    "key": "latitude",
    "title": "latitude",
    "description": "Degrees north; negative in the south.",
    "required": true,
    "examples": [
     "43.5 deg"
    ],
    "symbol": "latitude",
    "type": "quantity",
    "quantity": "angle",
    "unit": "deg"
   },
   {
    "key": "longitude",
    "title": "longitude",
    "description": "Degrees east; negative in the west.",
    "examples": [
     "-1.5 deg"
    ],
    "symbol": "longitude",
    "type": "quantity",
    "quantity": "angle",
    "unit": "deg"
   },
   {
    "key": "sun",
    "title": "sun",
    "description": "Solar energy on the horizontal on a mean day of each month, January first.",
    "required": true,
    "examples": [
     "[1.6, 2.5, 3.9, 4.8, 5.7, 6.2, 6.1, 5.4, 4.3, 2.8, 1.8, 1.4]"
    ],
    "type": "list",
    "item": {
     "key": "",
     "title": "sun",
     "description": "Solar energy on the horizontal on a mean day of the month.",
     "examples": [
      "4.8 kWh/m2"
     ],
     "symbol": "sun",
     "type": "quantity",
     "quantity": "irradiation",
     "unit": "kWh/m2"
    }
   },
   {
    "key": "air",
    "title": "air",
    "description": "Air temperature.",
    "type": "group",
    "fields": [
     {
      "key": "mean_high",
      "title": "mean daily highs",
      "description": "Mean of the daily highs of each month, January first.",
      "examples": [
       "[12, 13, 15, 17, 20, 23, 25, 26, 24, 20, 15, 12]"
      ],
      "type": "list",
      "item": {
       "key": "",
       "title": "mean daily high",
       "description": "Mean of the daily highs of a month.",
       "examples": [
        "20 °C"
       ],
       "symbol": "mean daily high",
       "type": "quantity",
       "quantity": "temperature",
       "unit": "°C"
      }
     },
     {
      "key": "mean_low",
      "title": "mean daily lows",
      "description": "Mean of the daily lows of each month, January first.",
      "examples": [
       "[5, 5, 7, 9, 12, 15, 17, 17, 15, 12, 8, 5]"
      ],
      "type": "list",
      "item": {
       "key": "",
       "title": "mean daily low",
       "description": "Mean of the daily lows of a month.",
       "examples": [
        "12 °C"
       ],
       "symbol": "mean daily low",
       "type": "quantity",
       "quantity": "temperature",
       "unit": "°C"
      }
     },
     {
      "key": "coldest",
      "title": "coldest air",
      "description": "Lowest temperature of many years.",
      "examples": [
       "-7 °C"
      ],
      "symbol": "coldest air",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     },
     {
      "key": "hottest",
      "title": "hottest air",
      "description": "Highest temperature of many years.",
      "examples": [
       "39 °C"
      ],
      "symbol": "hottest air",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     }
    ]
   },
   {
    "key": "ground_reflection",
    "title": "ground reflection",
    "description": "Share of the sunlight that water, ground or deck throws back; 20 % where nothing is said.",
    "examples": [
     "20 %"
    ],
    "symbol": "ground reflection",
    "type": "quantity",
    "quantity": "ratio",
    "unit": "%"
   },
   {
    "key": "hourly",
    "title": "hourly weather",
    "description": "A file of hourly weather in EPW format, from the folder of this record. Its days are then used in place of days made from the monthly means.",
    "examples": [
     "example-bay.epw"
    ],
    "type": "text"
   },
   {
    "key": "source",
    "title": "source",
    "description": "Where the numbers come from.",
    "examples": [
     "national weather service, means of 1991 to 2020"
    ],
    "type": "text"
   },
   {
    "key": "notes",
    "title": "notes",
    "description": "Anything else worth knowing.",
    "examples": [
     "Sheltered from the west."
    ],
    "type": "text"
   },
   {
    "key": "accepted",
    "title": "accepted findings",
    "description": "Findings that a person has looked at and lets stand, each with the reason. In YAML a comment `# accept rule-id: reason` on the line does the same.",
    "type": "list",
    "item": {
     "key": "",
     "title": "accepted finding",
     "description": "One finding that stands.",
     "type": "group",
     "fields": [
      {
       "key": "rule",
       "title": "rule",
       "description": "The id of the rule.",
       "required": true,
       "examples": [
        "climate-sun-impossible"
       ],
       "type": "text"
      },
      {
       "key": "field",
       "title": "field",
       "description": "JSON pointer of the field.",
       "required": true,
       "examples": [
        "/sun/5"
       ],
       "type": "text"
      },
      {
       "key": "because",
       "title": "reason",
       "description": "Why the value is right all the same.",
       "required": true,
       "examples": [
        "mountain station"
       ],
       "type": "text"
      }
     ]
    }
   }
  ]
 },
 "system": {
  "key": "",
  "title": "System description",
  "description": "One customer's system: where the panels lie, how they are wired, what the battery and the loads are.",
  "type": "group",
  "fields": [
   {
    "key": "format",
    "title": "format",
    "description": "The version of this record format.",
    "required": true,
    "examples": [
     "1"
    ],
    "type": "integer"
   },
   {
    "key": "name",
    "title": "name",
    "description": "Whose system it is.",
    "required": true,
    "examples": [
     "Sailing boat, 10 m"
    ],
    "type": "text"
   },
   {
    "key": "kind",
    "title": "kind",
    "description": "What it is built into.",
    "required": true,
    "type": "choice",
    "choices": [
     {
      "value": "boat",
      "description": "a boat"
     },
     {
      "value": "vehicle",
      "description": "a van, a motorhome or another vehicle"
     },
     {
      "value": "cabin",
      "description": "a cabin or another building"
     }
    ]
   },
   {
    "key": "site",
    "title": "site",
    "description": "Where it is used.",
    "type": "group",
    "fields": [
     {
      "key": "climate",
      "title": "climate",
      "description": "Id of a climate record, or its fields.",
      "examples": [
       "example-bay"
      ],
      "type": "reference",
      "record": "climate"
     },
     {
      "key": "latitude",
      "title": "latitude",
      "description": "Degrees north; negative in the south. Wins over the climate's.",
      "examples": [
       "43.5 deg"
      ],
      "symbol": "latitude",
      "type": "quantity",
      "quantity": "angle",
      "unit": "deg"
     },
     {
      "key": "coldest",
      "title": "coldest air",
      "description": "Lowest air temperature by daylight. Wins over the climate's.",
      "examples": [
       "-5 °C"
      ],
      "symbol": "coldest air",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     },
     {
      "key": "hottest",
      "title": "hottest air",
      "description": "Air of a hot day. Wins over the climate's.",
      "examples": [
       "38 °C"
      ],
      "symbol": "hottest air",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     },
     {
      "key": "swings",
      "title": "swings",
      "description": "Whether it turns with wind and tide, as a boat at anchor does: no surface then has an azimuth, and all directions count alike.",
      "examples": [
       "true"
      ],
      "type": "boolean"
     }
    ]
   },
   {
    "key": "surfaces",
    "title": "surfaces",
    "description": "Where panels may lie.",
    "type": "list",
    "item": {
     "key": "",
     "title": "surface",
     "description": "One deck, roof or canvas.",
     "type": "group",
     "fields": [
      {
       "key": "id",
       "title": "id",
       "description": "The name that arrays use for it.",
       "required": true,
       "examples": [
        "coachroof"
       ],
       "type": "text"
      },
      {
       "key": "size",
       "title": "size",
       "description": "Outline.",
       "required": true,
       "type": "group",
       "fields": [
        {
         "key": "length",
         "title": "length",
         "description": "Along the x of keep-outs.",
         "required": true,
         "examples": [
          "3.2 m"
         ],
         "symbol": "length",
         "type": "quantity",
         "quantity": "length",
         "unit": "m"
        },
        {
         "key": "width",
         "title": "width",
         "description": "Along the y of keep-outs.",
         "required": true,
         "examples": [
          "1.8 m"
         ],
         "symbol": "width",
         "type": "quantity",
         "quantity": "length",
         "unit": "m"
        }
       ]
      },
      {
       "key": "keep_out",
       "title": "keep-outs",
       "description": "Hatches, rails, vents: places that must stay free.",
       "type": "list",
       "item": {
        "key": "",
        "title": "keep-out",
        "description": "One place that must stay free, from the corner of the surface.",
        "type": "group",
        "fields": [
         {
          "key": "name",
          "title": "name",
          "description": "What is there.",
          "examples": [
           "hatch"
          ],
          "type": "text"
         },
         {
          "key": "x",
          "title": "x",
          "description": "From the corner along the length.",
          "required": true,
          "examples": [
           "1200 mm"
          ],
          "symbol": "x",
          "type": "quantity",
          "quantity": "length",
          "unit": "mm"
         },
         {
          "key": "y",
          "title": "y",
          "description": "From the corner along the width.",
          "required": true,
          "examples": [
           "600 mm"
          ],
          "symbol": "y",
          "type": "quantity",
          "quantity": "length",
          "unit": "mm"
         },
         {
          "key": "length",
          "title": "length",
          "description": "Along the surface's length.",
          "required": true,
          "examples": [
           "600 mm"
          ],
          "symbol": "length",
          "type": "quantity",
          "quantity": "length",
          "unit": "mm"
         },
         {
          "key": "width",
          "title": "width",
          "description": "Along the surface's width.",
          "required": true,
          "examples": [
           "600 mm"
          ],
          "symbol": "width",
          "type": "quantity",
          "quantity": "length",
          "unit": "mm"
         }
        ]
       }
      },
      {
       "key": "gap",
       "title": "gap",
       "description": "Least distance between panels; none where nothing is said.",
       "examples": [
        "10 mm"
       ],
       "symbol": "gap",
       "type": "quantity",
       "quantity": "length",
       "unit": "mm"
      },
      {
       "key": "walkway",
       "title": "walkway",
       "description": "A strip that stays free for feet, along one side of the surface, from the corner.",
       "type": "group",
       "fields": [
        {
         "key": "side",
         "title": "side",
         "description": "Which side it runs along.",
         "required": true,
         "examples": [
          "length"
         ],
         "type": "choice",
         "choices": [
          {
           "value": "length",
           "description": "along the length, where y is 0"
          },
          {
           "value": "width",
           "description": "along the width, where x is 0"
          }
         ]
        },
        {
         "key": "width",
         "title": "width",
         "description": "How broad it is.",
         "required": true,
         "examples": [
          "300 mm"
         ],
         "symbol": "walkway width",
         "type": "quantity",
         "quantity": "length",
         "unit": "mm"
        }
       ]
      },
      {
       "key": "mounting",
       "title": "mounting",
       "description": "How panels are fixed to it.",
       "type": "choice",
       "choices": [
        {
         "value": "bonded",
         "description": "glued down, no air behind"
        },
        {
         "value": "canvas",
         "description": "laced or zipped to fabric, about 25 mm of air"
        },
        {
         "value": "standoff",
         "description": "on spacers, about 75 mm of air"
        },
        {
         "value": "open rack",
         "description": "air all around"
        }
       ]
      },
      {
       "key": "tilt",
       "title": "tilt",
       "description": "0 is flat.",
       "examples": [
        "0 deg"
       ],
       "symbol": "tilt",
       "type": "quantity",
       "quantity": "angle",
       "unit": "deg"
      },
      {
       "key": "azimuth",
       "title": "azimuth",
       "description": "Compass direction that it faces: 180 is south.",
       "examples": [
        "180 deg"
       ],
       "symbol": "azimuth",
       "type": "quantity",
       "quantity": "angle",
       "unit": "deg"
      },
      {
       "key": "curvature",
       "title": "curvature",
       "description": "By how much the surface bends over its width.",
       "examples": [
        "20 deg"
       ],
       "symbol": "curvature",
       "type": "quantity",
       "quantity": "angle",
       "unit": "deg"
      },
      {
       "key": "shading",
       "title": "shading",
       "description": "Share of the day's energy that rigging, rails or trees take; an estimate of the person.",
       "examples": [
        "10 %"
       ],
       "symbol": "shading",
       "type": "quantity",
       "quantity": "ratio",
       "unit": "%"
      },
      {
       "key": "walked_on",
       "title": "walked on",
       "description": "Whether people step on it.",
       "examples": [
        "false"
       ],
       "type": "boolean"
      }
     ]
    }
   },
   {
    "key": "arrays",
    "title": "arrays",
    "description": "Panels that are wired together to one controller.",
    "required": true,
    "type": "list",
    "item": {
     "key": "",
     "title": "array",
     "description": "Panels on one controller.",
     "type": "group",
     "fields": [
      {
       "key": "id",
       "title": "id",
       "description": "Its name.",
       "required": true,
       "examples": [
        "main"
       ],
       "type": "text"
      },
      {
       "key": "panels",
       "title": "panels",
       "description": "The panels of the array, in the order in which they are wired: string after string.",
       "required": true,
       "type": "list",
       "item": {
        "key": "",
        "title": "panels of one kind",
        "description": "So many panels of one kind on one surface.",
        "type": "group",
        "fields": [
         {
          "key": "panel",
          "title": "panel",
          "description": "Id of a panel record, or its fields.",
          "required": true,
          "examples": [
           "tern-110"
          ],
          "type": "reference",
          "record": "panel"
         },
         {
          "key": "count",
          "title": "count",
          "description": "How many.",
          "required": true,
          "examples": [
           "4"
          ],
          "type": "integer"
         },
         {
          "key": "surface",
          "title": "surface",
          "description": "Id of the surface that they lie on.",
          "examples": [
           "coachroof"
          ],
          "type": "text"
         }
        ]
       }
      },
      {
       "key": "wiring",
       "title": "wiring",
       "description": "How the panels are wired.",
       "required": true,
       "type": "group",
       "fields": [
        {
         "key": "in_series",
         "title": "in series",
         "description": "Panels of one string.",
         "required": true,
         "examples": [
          "2"
         ],
         "type": "integer"
        },
        {
         "key": "in_parallel",
         "title": "in parallel",
         "description": "Strings side by side.",
         "required": true,
         "examples": [
          "2"
         ],
         "type": "integer"
        }
       ]
      },
      {
       "key": "string_fuse",
       "title": "string fuse",
       "description": "Fuse in each string.",
       "examples": [
        "10 A"
       ],
       "symbol": "string fuse",
       "type": "quantity",
       "quantity": "current",
       "unit": "A"
      },
      {
       "key": "controller",
       "title": "controller",
       "description": "Id of a controller record, or its fields.",
       "examples": [
        "example-mppt-30"
       ],
       "type": "reference",
       "record": "controller"
      },
      {
       "key": "shares_controller_with",
       "title": "shares the controller with",
       "description": "Id of another array on the same input of the same controller; this one then names no controller.",
       "examples": [
        "main"
       ],
       "type": "text"
      },
      {
       "key": "cable",
       "title": "array cable",
       "description": "From the array to the controller.",
       "type": "group",
       "fields": [
        {
         "key": "size",
         "title": "cable size",
         "description": "Cross-section of one conductor.",
         "required": true,
         "examples": [
          "6 mm2",
          "10 AWG"
         ],
         "symbol": "cable size",
         "type": "quantity",
         "quantity": "area",
         "unit": "mm2"
        },
        {
         "key": "length",
         "title": "cable length",
         "description": "One way.",
         "required": true,
         "examples": [
          "8 m"
         ],
         "symbol": "cable length",
         "type": "quantity",
         "quantity": "length",
         "unit": "m"
        },
        {
         "key": "insulation",
         "title": "insulation rating",
         "description": "Temperature that the insulation stands.",
         "examples": [
          "90 °C"
         ],
         "symbol": "insulation rating",
         "type": "quantity",
         "quantity": "temperature",
         "unit": "°C"
        },
        {
         "key": "ambient",
         "title": "cable surroundings",
         "description": "Air around the cable; 60 °C for an array's cable and 30 °C for the battery's where nothing is said.",
         "examples": [
          "60 °C"
         ],
         "symbol": "cable surroundings",
         "type": "quantity",
         "quantity": "temperature",
         "unit": "°C"
        },
        {
         "key": "bundled",
         "title": "conductors in the bundle",
         "description": "How many loaded conductors lie together; two where nothing is said.",
         "examples": [
          "2"
         ],
         "type": "integer"
        }
       ]
      },
      {
       "key": "disconnect",
       "title": "array disconnect",
       "description": "Switch or breaker between the array and the controller.",
       "type": "group",
       "fields": [
        {
         "key": "current",
         "title": "disconnect current",
         "description": "What it is rated for.",
         "examples": [
          "32 A"
         ],
         "symbol": "disconnect current",
         "type": "quantity",
         "quantity": "current",
         "unit": "A"
        },
        {
         "key": "voltage",
         "title": "disconnect voltage",
         "description": "Direct voltage that it can switch.",
         "examples": [
          "150 V"
         ],
         "symbol": "disconnect voltage",
         "type": "quantity",
         "quantity": "voltage",
         "unit": "V"
        }
       ]
      },
      {
       "key": "output",
       "title": "controller output",
       "description": "Between the controller and the busbar or the battery.",
       "type": "group",
       "fields": [
        {
         "key": "fuse",
         "title": "output fuse",
         "description": "Fuse at the end of the battery.",
         "examples": [
          "40 A"
         ],
         "symbol": "output fuse",
         "type": "quantity",
         "quantity": "current",
         "unit": "A"
        },
        {
         "key": "cable",
         "title": "output cable",
         "description": "From the controller to the busbar or the battery.",
         "type": "group",
         "fields": [
          {
           "key": "size",
           "title": "cable size",
           "description": "Cross-section of one conductor.",
           "required": true,
           "examples": [
            "6 mm2",
            "10 AWG"
           ],
           "symbol": "cable size",
           "type": "quantity",
           "quantity": "area",
           "unit": "mm2"
          },
          {
           "key": "length",
           "title": "cable length",
           "description": "One way.",
           "required": true,
           "examples": [
            "8 m"
           ],
           "symbol": "cable length",
           "type": "quantity",
           "quantity": "length",
           "unit": "m"
          },
          {
           "key": "insulation",
           "title": "insulation rating",
           "description": "Temperature that the insulation stands.",
           "examples": [
            "90 °C"
           ],
           "symbol": "insulation rating",
           "type": "quantity",
           "quantity": "temperature",
           "unit": "°C"
          },
          {
           "key": "ambient",
           "title": "cable surroundings",
           "description": "Air around the cable; 60 °C for an array's cable and 30 °C for the battery's where nothing is said.",
           "examples": [
            "60 °C"
           ],
           "symbol": "cable surroundings",
           "type": "quantity",
           "quantity": "temperature",
           "unit": "°C"
          },
          {
           "key": "bundled",
           "title": "conductors in the bundle",
           "description": "How many loaded conductors lie together; two where nothing is said.",
           "examples": [
            "2"
           ],
           "type": "integer"
          }
         ]
        }
       ]
      },
      {
       "key": "installed",
       "title": "installed",
       "description": "When its panels were put up. The years of their warranty count from here; from the first measurement where nothing is said.",
       "examples": [
        "2025-05-02"
       ],
       "type": "date"
      }
     ]
    }
   },
   {
    "key": "battery",
    "title": "battery",
    "description": "The bank.",
    "type": "group",
    "fields": [
     {
      "key": "battery",
      "title": "battery",
      "description": "Id of a battery record, or its fields.",
      "examples": [
       "example-lfp-100"
      ],
      "type": "reference",
      "record": "battery"
     },
     {
      "key": "in_series",
      "title": "in series",
      "description": "Batteries in series.",
      "examples": [
       "1"
      ],
      "type": "integer"
     },
     {
      "key": "in_parallel",
      "title": "in parallel",
      "description": "Batteries, or strings of them, side by side.",
      "examples": [
       "2"
      ],
      "type": "integer"
     },
     {
      "key": "autonomy",
      "title": "autonomy",
      "description": "How long the bank is to last without sun.",
      "examples": [
       "2 days"
      ],
      "symbol": "autonomy",
      "type": "quantity",
      "quantity": "duration",
      "unit": "days"
     },
     {
      "key": "place",
      "title": "place",
      "description": "Where the battery is kept, which decides how cold it gets; where nothing is said, inside with `kept_above` and outside without.",
      "examples": [
       "inside"
      ],
      "type": "choice",
      "choices": [
       {
        "value": "inside",
        "description": "behind walls, as cold as the day's mean, or as warm as it is kept"
       },
       {
        "value": "outside",
        "description": "as cold as the air"
       }
      ]
     },
     {
      "key": "kept_above",
      "title": "kept above",
      "description": "The lowest temperature of a place inside, which people or a heater of the room keep.",
      "examples": [
       "5 °C"
      ],
      "symbol": "kept above",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     },
     {
      "key": "fuse",
      "title": "battery fuse",
      "description": "Fuse of the main cable, at the bank.",
      "examples": [
       "60 A"
      ],
      "symbol": "battery fuse",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "each_fuse",
      "title": "fuse of each battery",
      "description": "Fuse at each battery, or string of batteries, in parallel.",
      "examples": [
       "125 A"
      ],
      "symbol": "fuse of each battery",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "interrupting_rating",
      "title": "interrupting rating",
      "description": "Short-circuit current that the main fuse can break.",
      "examples": [
       "20 kA"
      ],
      "symbol": "interrupting rating",
      "type": "quantity",
      "quantity": "current",
      "unit": "A"
     },
     {
      "key": "low_temperature_cutoff",
      "title": "low-temperature cut-off",
      "description": "Whether charging stops when it is too cold; `charge_protection` says more.",
      "examples": [
       "true"
      ],
      "type": "boolean"
     },
     {
      "key": "charge_protection",
      "title": "charge protection",
      "description": "What happens when it is too cold to be charged. Wins over `low_temperature_cutoff`, which means a cut-off.",
      "examples": [
       "heated"
      ],
      "type": "choice",
      "choices": [
       {
        "value": "cutoff",
        "description": "charging stops until the battery is warm enough"
       },
       {
        "value": "heated",
        "description": "what charges warms the battery first"
       }
      ]
     },
     {
      "key": "cable",
      "title": "battery cable",
      "description": "The main cable between the bank and the busbar, which all sources and loads share.",
      "type": "group",
      "fields": [
       {
        "key": "size",
        "title": "cable size",
        "description": "Cross-section of one conductor.",
        "required": true,
        "examples": [
         "6 mm2",
         "10 AWG"
        ],
        "symbol": "cable size",
        "type": "quantity",
        "quantity": "area",
        "unit": "mm2"
       },
       {
        "key": "length",
        "title": "cable length",
        "description": "One way.",
        "required": true,
        "examples": [
         "8 m"
        ],
        "symbol": "cable length",
        "type": "quantity",
        "quantity": "length",
        "unit": "m"
       },
       {
        "key": "insulation",
        "title": "insulation rating",
        "description": "Temperature that the insulation stands.",
        "examples": [
         "90 °C"
        ],
        "symbol": "insulation rating",
        "type": "quantity",
        "quantity": "temperature",
        "unit": "°C"
       },
       {
        "key": "ambient",
        "title": "cable surroundings",
        "description": "Air around the cable; 60 °C for an array's cable and 30 °C for the battery's where nothing is said.",
        "examples": [
         "60 °C"
        ],
        "symbol": "cable surroundings",
        "type": "quantity",
        "quantity": "temperature",
        "unit": "°C"
       },
       {
        "key": "bundled",
        "title": "conductors in the bundle",
        "description": "How many loaded conductors lie together; two where nothing is said.",
        "examples": [
         "2"
        ],
        "type": "integer"
       }
      ]
     }
    ]
   },
   {
    "key": "inverter",
    "title": "inverter",
    "description": "What makes mains voltage of the battery's.",
    "type": "group",
    "fields": [
     {
      "key": "efficiency",
      "title": "inverter efficiency",
      "description": "Power out over power in.",
      "examples": [
       "90 %"
      ],
      "symbol": "inverter efficiency",
      "type": "quantity",
      "quantity": "ratio",
      "unit": "%"
     },
     {
      "key": "standby",
      "title": "standby",
      "description": "What it draws by itself while switched on.",
      "examples": [
       "8 W"
      ],
      "symbol": "standby",
      "type": "quantity",
      "quantity": "power",
      "unit": "W"
     },
     {
      "key": "hours",
      "title": "hours a day",
      "description": "How long it is switched on; 24 h where nothing is said.",
      "examples": [
       "24"
      ],
      "symbol": "hours a day",
      "type": "quantity",
      "quantity": "duration",
      "unit": "h"
     },
     {
      "key": "power",
      "title": "inverter power",
      "description": "Most that it gives for hours.",
      "examples": [
       "2000 W"
      ],
      "symbol": "inverter power",
      "type": "quantity",
      "quantity": "power",
      "unit": "W"
     },
     {
      "key": "surge",
      "title": "inverter surge",
      "description": "Most that it gives for seconds, as motors start.",
      "examples": [
       "4000 W"
      ],
      "symbol": "inverter surge",
      "type": "quantity",
      "quantity": "power",
      "unit": "W"
     }
    ]
   },
   {
    "key": "loads",
    "title": "loads",
    "description": "What uses energy.",
    "type": "list",
    "item": {
     "key": "",
     "title": "load",
     "description": "One consumer.",
     "type": "group",
     "fields": [
      {
       "key": "name",
       "title": "name",
       "description": "What it is.",
       "required": true,
       "examples": [
        "fridge"
       ],
       "type": "text"
      },
      {
       "key": "power",
       "title": "power",
       "description": "While it runs.",
       "examples": [
        "45 W"
       ],
       "symbol": "power",
       "type": "quantity",
       "quantity": "power",
       "unit": "W"
      },
      {
       "key": "current",
       "title": "current",
       "description": "While it runs, at the nominal voltage of the bank; in place of `power`.",
       "examples": [
        "3.5 A"
       ],
       "symbol": "current",
       "type": "quantity",
       "quantity": "current",
       "unit": "A"
      },
      {
       "key": "hours",
       "title": "hours a day",
       "description": "How long on a day of use.",
       "examples": [
        "12"
       ],
       "symbol": "hours a day",
       "type": "quantity",
       "quantity": "duration",
       "unit": "h"
      },
      {
       "key": "energy",
       "title": "energy a day",
       "description": "On a day of use; in place of `hours`, or of both.",
       "examples": [
        "540 Wh"
       ],
       "symbol": "energy a day",
       "type": "quantity",
       "quantity": "energy",
       "unit": "Wh"
      },
      {
       "key": "charge",
       "title": "charge a day",
       "description": "Ampere-hours on a day of use, at the nominal voltage of the bank; in place of `hours`, or of both.",
       "examples": [
        "45 Ah"
       ],
       "symbol": "charge a day",
       "type": "quantity",
       "quantity": "charge",
       "unit": "Ah"
      },
      {
       "key": "surge",
       "title": "starting power",
       "description": "Most that it takes for seconds, as a motor starts.",
       "examples": [
        "900 W"
       ],
       "symbol": "starting power",
       "type": "quantity",
       "quantity": "power",
       "unit": "W"
      },
      {
       "key": "at",
       "title": "time of day",
       "description": "When on the day it runs: `day` (8 to 18 h), `evening` (18 to 24 h), `night` (22 to 6 h), or from when to when, such as 18..24 h. Spread over the whole day where nothing is said.",
       "examples": [
        "evening",
        "day",
        "night",
        "18..24 h"
       ],
       "type": "text"
      },
      {
       "key": "supply",
       "title": "supply",
       "description": "Where it is connected.",
       "type": "choice",
       "choices": [
        {
         "value": "dc",
         "description": "to the battery"
        },
        {
         "value": "ac",
         "description": "through the inverter"
        }
       ]
      },
      {
       "key": "months",
       "title": "months",
       "description": "The months of use, 1 to 12; all where nothing is said.",
       "examples": [
        "[5, 6, 7, 8, 9]"
       ],
       "type": "list",
       "item": {
        "key": "",
        "title": "month",
        "description": "A month.",
        "examples": [
         "5"
        ],
        "type": "integer"
       }
      },
      {
       "key": "days_a_week",
       "title": "days a week",
       "description": "On how many days of the week; 7 where nothing is said.",
       "examples": [
        "2"
       ],
       "type": "number"
      },
      {
       "key": "one_of",
       "title": "one of",
       "description": "Name of a group of loads that never run together; the largest of them counts for currents.",
       "examples": [
        "galley"
       ],
       "type": "text"
      },
      {
       "key": "own_breaker",
       "title": "own breaker",
       "description": "Whether it has a fuse and cable of its own from the bank, so that the main fuse and cable do not carry it.",
       "examples": [
        "true"
       ],
       "type": "boolean"
      }
     ]
    }
   },
   {
    "key": "other_sources",
    "title": "other sources",
    "description": "What charges beside the sun.",
    "type": "list",
    "item": {
     "key": "",
     "title": "source",
     "description": "One source, such as an alternator, shore power or wind.",
     "type": "group",
     "fields": [
      {
       "key": "name",
       "title": "name",
       "description": "What it is.",
       "required": true,
       "examples": [
        "alternator"
       ],
       "type": "text"
      },
      {
       "key": "kind",
       "title": "kind",
       "description": "What it is. Wind and water give by day and night, the others from the morning on.",
       "examples": [
        "shore"
       ],
       "type": "choice",
       "choices": [
        {
         "value": "alternator",
         "description": "an alternator straight on the bank"
        },
        {
         "value": "dc-dc",
         "description": "a charger fed by another battery"
        },
        {
         "value": "shore",
         "description": "a charger on shore or mains power"
        },
        {
         "value": "generator",
         "description": "a generator with its charger"
        },
        {
         "value": "wind",
         "description": "a wind turbine"
        },
        {
         "value": "hydro",
         "description": "a water turbine"
        },
        {
         "value": "other",
         "description": "anything else"
        }
       ]
      },
      {
       "key": "power",
       "title": "power",
       "description": "Into the battery while it runs.",
       "examples": [
        "400 W"
       ],
       "symbol": "power",
       "type": "quantity",
       "quantity": "power",
       "unit": "W"
      },
      {
       "key": "current",
       "title": "current",
       "description": "Into the battery while it runs, at its charge voltage; in place of `power`.",
       "examples": [
        "30 A"
       ],
       "symbol": "current",
       "type": "quantity",
       "quantity": "current",
       "unit": "A"
      },
      {
       "key": "hours",
       "title": "hours a day",
       "description": "How long on a day of use.",
       "required": true,
       "examples": [
        "1"
       ],
       "symbol": "hours a day",
       "type": "quantity",
       "quantity": "duration",
       "unit": "h"
      },
      {
       "key": "months",
       "title": "months",
       "description": "The months of use, 1 to 12; all where nothing is said.",
       "examples": [
        "[5, 6, 7, 8, 9]"
       ],
       "type": "list",
       "item": {
        "key": "",
        "title": "month",
        "description": "A month.",
        "examples": [
         "5"
        ],
        "type": "integer"
       }
      },
      {
       "key": "days_a_week",
       "title": "days a week",
       "description": "On how many days of the week; 7 where nothing is said.",
       "examples": [
        "2"
       ],
       "type": "number"
      }
     ]
    }
   },
   {
    "key": "measurements",
    "title": "measurements",
    "description": "What was read off the meter, each time that somebody measured.",
    "type": "list",
    "item": {
     "key": "",
     "title": "measurement",
     "description": "What was measured on the strings of one array at one time.",
     "type": "group",
     "fields": [
      {
       "key": "date",
       "title": "date",
       "description": "The day of the measurement.",
       "required": true,
       "examples": [
        "2026-06-14"
       ],
       "type": "date"
      },
      {
       "key": "array",
       "title": "array",
       "description": "Id of the array; may be left out where there is only one.",
       "examples": [
        "main"
       ],
       "type": "text"
      },
      {
       "key": "irradiance",
       "title": "irradiance",
       "description": "Power of the sun in the plane of the panels, at the time of the measurement.",
       "examples": [
        "780 W/m2"
       ],
       "symbol": "irradiance",
       "type": "quantity",
       "quantity": "irradiance",
       "unit": "W/m2"
      },
      {
       "key": "reference",
       "title": "reference panel",
       "description": "A panel in the same plane whose current shows the irradiance; in place of `irradiance`.",
       "type": "group",
       "fields": [
        {
         "key": "panel",
         "title": "panel",
         "description": "Id of its panel record, or its fields.",
         "required": true,
         "examples": [
          "tern-110"
         ],
         "type": "reference",
         "record": "panel"
        },
        {
         "key": "isc",
         "title": "short-circuit current",
         "description": "What the reference panel gave in the same moment.",
         "required": true,
         "examples": [
          "4.92 A"
         ],
         "symbol": "Isc of the reference",
         "type": "quantity",
         "quantity": "current",
         "unit": "A"
        }
       ]
      },
      {
       "key": "cell_temperature",
       "title": "cell temperature",
       "description": "Of the cells, taken at the back of a panel.",
       "examples": [
        "52 °C"
       ],
       "symbol": "cell temperature",
       "type": "quantity",
       "quantity": "temperature",
       "unit": "°C"
      },
      {
       "key": "air",
       "title": "air temperature",
       "description": "In the shade; the cells are estimated from it where `cell_temperature` is not given.",
       "examples": [
        "31 °C"
       ],
       "symbol": "air temperature",
       "type": "quantity",
       "quantity": "temperature",
       "unit": "°C"
      },
      {
       "key": "strings",
       "title": "strings",
       "description": "The strings that were measured.",
       "required": true,
       "type": "list",
       "item": {
        "key": "",
        "title": "string",
        "description": "What the meter showed on one string.",
        "type": "group",
        "fields": [
         {
          "key": "string",
          "title": "string",
          "description": "Its number, from 1 in the order of the list of panels.",
          "required": true,
          "examples": [
           "1"
          ],
          "type": "integer"
         },
         {
          "key": "voc",
          "title": "open-circuit voltage",
          "description": "With nothing connected. Negative where the meter shows it reversed.",
          "examples": [
           "42.1 V"
          ],
          "symbol": "Voc",
          "type": "quantity",
          "quantity": "voltage",
          "unit": "V"
         },
         {
          "key": "isc",
          "title": "short-circuit current",
          "description": "With the ends of the string joined, by a clamp meter and a switch made for it.",
          "examples": [
           "5.02 A"
          ],
          "symbol": "Isc",
          "type": "quantity",
          "quantity": "current",
          "unit": "A"
         },
         {
          "key": "vmp",
          "title": "voltage at maximum power",
          "description": "While it works at its maximum power, as a controller shows it or a curve tracer.",
          "examples": [
           "33.0 V"
          ],
          "symbol": "Vmp",
          "type": "quantity",
          "quantity": "voltage",
          "unit": "V"
         },
         {
          "key": "imp",
          "title": "current at maximum power",
          "description": "In the same moment as Vmp.",
          "examples": [
           "4.80 A"
          ],
          "symbol": "Imp",
          "type": "quantity",
          "quantity": "current",
          "unit": "A"
         },
         {
          "key": "notes",
          "title": "notes",
          "description": "What was seen on this string.",
          "examples": [
           "bird droppings on the lower panel"
          ],
          "type": "text"
         }
        ]
       }
      },
      {
       "key": "notes",
       "title": "notes",
       "description": "Anything else worth knowing.",
       "examples": [
        "Thin cloud at the end."
       ],
       "type": "text"
      }
     ]
    }
   },
   {
    "key": "limits",
    "title": "limits",
    "description": "What the customer set.",
    "type": "group",
    "fields": [
     {
      "key": "weight",
      "title": "weight limit",
      "description": "Panels and their frames together.",
      "examples": [
       "40 kg"
      ],
      "symbol": "weight limit",
      "type": "quantity",
      "quantity": "mass",
      "unit": "kg"
     },
     {
      "key": "budget",
      "title": "budget",
      "description": "Panels, controllers and batteries together.",
      "examples": [
       "2500 USD"
      ],
      "symbol": "budget",
      "type": "quantity",
      "quantity": "money"
     }
    ]
   },
   {
    "key": "notes",
    "title": "notes",
    "description": "Anything else worth knowing.",
    "examples": [
     "Moored bow to the south."
    ],
    "type": "text"
   },
   {
    "key": "accepted",
    "title": "accepted findings",
    "description": "Findings that a person has looked at and lets stand, each with the reason. In YAML a comment `# accept rule-id: reason` on the line does the same.",
    "type": "list",
    "item": {
     "key": "",
     "title": "accepted finding",
     "description": "One finding that stands.",
     "type": "group",
     "fields": [
      {
       "key": "rule",
       "title": "rule",
       "description": "The id of the rule.",
       "required": true,
       "examples": [
        "cable-drop"
       ],
       "type": "text"
      },
      {
       "key": "field",
       "title": "field",
       "description": "JSON pointer of the field.",
       "required": true,
       "examples": [
        "/arrays/0/cable/size"
       ],
       "type": "text"
      },
      {
       "key": "because",
       "title": "reason",
       "description": "Why the value is right all the same.",
       "required": true,
       "examples": [
        "old cable stays this season"
       ],
       "type": "text"
      }
     ]
    }
   }
  ]
 },
 "library": {
  "key": "",
  "title": "Settings of a library",
  "description": "wattproof.yaml: settings for all records of this folder and below.",
  "type": "group",
  "fields": [
   {
    "key": "format",
    "title": "format",
    "description": "The version of this record format.",
    "required": true,
    "examples": [
     "1"
    ],
    "type": "integer"
   },
   {
    "key": "name",
    "title": "name",
    "description": "What this library is.",
    "examples": [
     "Our panels"
    ],
    "type": "text"
   },
   {
    "key": "site",
    "title": "site defaults",
    "description": "Assumed where a system says nothing.",
    "type": "group",
    "fields": [
     {
      "key": "hottest",
      "title": "hottest air",
      "description": "Air temperature of a hot day.",
      "examples": [
       "35 °C"
      ],
      "symbol": "hottest air",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     },
     {
      "key": "coldest",
      "title": "coldest air",
      "description": "Lowest air temperature by daylight.",
      "examples": [
       "-10 °C"
      ],
      "symbol": "coldest air",
      "type": "quantity",
      "quantity": "temperature",
      "unit": "°C"
     },
     {
      "key": "mounting",
      "title": "mounting",
      "description": "How panels are mounted unless a system says otherwise.",
      "type": "choice",
      "choices": [
       {
        "value": "bonded",
        "description": "glued down, no air behind"
       },
       {
        "value": "canvas",
        "description": "laced or zipped to fabric, about 25 mm of air"
       },
       {
        "value": "standoff",
        "description": "on spacers, about 75 mm of air"
       },
       {
        "value": "open rack",
        "description": "air all around"
       }
      ]
     },
     {
      "key": "climate",
      "title": "climate",
      "description": "Id of a climate record; panels then show the energy of a year.",
      "examples": [
       "example-bay"
      ],
      "type": "text"
     }
    ]
   },
   {
    "key": "currency",
    "title": "currency",
    "description": "ISO 4217 code that a bare price is in.",
    "examples": [
     "USD"
    ],
    "type": "text"
   },
   {
    "key": "practice",
    "title": "practice",
    "description": "Whose rule for string fuses is followed; both where nothing is said.",
    "examples": [
     "IEC"
    ],
    "type": "choice",
    "choices": [
     {
      "value": "IEC",
      "description": "1.5 to 2.4 times Isc, as IEC 62548"
     },
     {
      "value": "NEC",
      "description": "at least 1.56 times Isc, as the US National Electrical Code"
     }
    ]
   },
   {
    "key": "columns",
    "title": "columns",
    "description": "What headings of tables mean that do not name a field themselves: the path of the field and, for bare numbers, their unit; `-` leaves a column out.",
    "type": "map",
    "item": {
     "key": "",
     "title": "column",
     "description": "The path of a field, with the unit of bare numbers; `-` leaves the column out.",
     "examples": [
      "stc.voc V",
      "stc.pmax",
      "-"
     ],
     "type": "text"
    }
   },
   {
    "key": "severities",
    "title": "severities",
    "description": "Severity per rule id; `off` silences a rule.",
    "type": "map",
    "item": {
     "key": "",
     "title": "severity",
     "description": "",
     "type": "choice",
     "choices": [
      {
       "value": "error",
       "description": ""
      },
      {
       "value": "warning",
       "description": ""
      },
      {
       "value": "information",
       "description": ""
      },
      {
       "value": "hint",
       "description": ""
      },
      {
       "value": "off",
       "description": ""
      }
     ]
    }
   },
   {
    "key": "price_bands",
    "title": "price bands",
    "description": "Usual prices per watt by construction.",
    "type": "group",
    "fields": [
     {
      "key": "flexible",
      "title": "flexible",
      "description": "Prices per watt that are usual for this construction.",
      "type": "group",
      "fields": [
       {
        "key": "low",
        "title": "low",
        "description": "Below this a price is questioned.",
        "required": true,
        "examples": [
         "1 USD"
        ],
        "type": "quantity",
        "quantity": "money"
       },
       {
        "key": "high",
        "title": "high",
        "description": "Above this a price is questioned.",
        "required": true,
        "examples": [
         "8 USD"
        ],
        "type": "quantity",
        "quantity": "money"
       }
      ]
     },
     {
      "key": "rigid",
      "title": "rigid",
      "description": "Prices per watt that are usual for this construction.",
      "type": "group",
      "fields": [
       {
        "key": "low",
        "title": "low",
        "description": "Below this a price is questioned.",
        "required": true,
        "examples": [
         "1 USD"
        ],
        "type": "quantity",
        "quantity": "money"
       },
       {
        "key": "high",
        "title": "high",
        "description": "Above this a price is questioned.",
        "required": true,
        "examples": [
         "8 USD"
        ],
        "type": "quantity",
        "quantity": "money"
       }
      ]
     },
     {
      "key": "folding",
      "title": "folding",
      "description": "Prices per watt that are usual for this construction.",
      "type": "group",
      "fields": [
       {
        "key": "low",
        "title": "low",
        "description": "Below this a price is questioned.",
        "required": true,
        "examples": [
         "1 USD"
        ],
        "type": "quantity",
        "quantity": "money"
       },
       {
        "key": "high",
        "title": "high",
        "description": "Above this a price is questioned.",
        "required": true,
        "examples": [
         "8 USD"
        ],
        "type": "quantity",
        "quantity": "money"
       }
      ]
     }
    ]
   },
   {
    "key": "expected_life",
    "title": "expected life",
    "description": "How long panels are expected to last, by construction; `compare` works out a price per kilowatt-hour from it.",
    "type": "group",
    "fields": [
     {
      "key": "flexible",
      "title": "flexible",
      "description": "Four years where nothing is said: bonded flexible panels last one to five (common practice, no source).",
      "examples": [
       "4 years"
      ],
      "symbol": "expected life, flexible",
      "type": "quantity",
      "quantity": "duration",
      "unit": "years"
     },
     {
      "key": "rigid",
      "title": "rigid",
      "description": "25 years where nothing is said (common practice, no source).",
      "examples": [
       "25 years"
      ],
      "symbol": "expected life, rigid",
      "type": "quantity",
      "quantity": "duration",
      "unit": "years"
     },
     {
      "key": "folding",
      "title": "folding",
      "description": "Not known where nothing is said.",
      "examples": [
       "5 years"
      ],
      "symbol": "expected life, folding",
      "type": "quantity",
      "quantity": "duration",
      "unit": "years"
     }
    ]
   },
   {
    "key": "measurements",
    "title": "measurements",
    "description": "how measured values of a system are evaluated.",
    "type": "group",
    "fields": [
     {
      "key": "limit",
      "title": "limit",
      "description": "How far a measured value may be from what the records expect, and from the other strings; 5 % where nothing is said (IEC 62446-1; from memory).",
      "examples": [
       "5 %"
      ],
      "symbol": "limit of measurements",
      "type": "quantity",
      "quantity": "ratio",
      "unit": "%"
     },
     {
      "key": "voltage",
      "title": "voltage uncertainty",
      "description": "Of the meter, at 95 % confidence; 1 % where nothing is said (common practice, no source).",
      "examples": [
       "1 %"
      ],
      "symbol": "uncertainty of voltage",
      "type": "quantity",
      "quantity": "ratio",
      "unit": "%"
     },
     {
      "key": "current",
      "title": "current uncertainty",
      "description": "Of the clamp, at 95 % confidence; 2 % where nothing is said (common practice, no source).",
      "examples": [
       "2 %"
      ],
      "symbol": "uncertainty of current",
      "type": "quantity",
      "quantity": "ratio",
      "unit": "%"
     },
     {
      "key": "irradiance",
      "title": "irradiance uncertainty",
      "description": "Of the irradiance meter, at 95 % confidence; 5 % where nothing is said (common practice, no source).",
      "examples": [
       "5 %"
      ],
      "symbol": "uncertainty of irradiance",
      "type": "quantity",
      "quantity": "ratio",
      "unit": "%"
     }
    ]
   }
  ]
 }
}
