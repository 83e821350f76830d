// Generated from schemas/ by `npm run generate`; do not edit.
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
      "kind": "power",
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
      "kind": "tolerance",
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
      "kind": "voltage",
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
      "kind": "current",
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
      "kind": "voltage",
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
      "kind": "current",
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
      "kind": "ratio",
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
      "kind": "power-coefficient",
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
      "kind": "voltage-coefficient",
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
      "kind": "current-coefficient",
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
      "kind": "voltage-coefficient",
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
      "kind": "current-coefficient",
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
      "kind": "temperature",
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
      "kind": "power",
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
      "kind": "voltage",
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
      "kind": "current",
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
      "kind": "voltage",
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
      "kind": "current",
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
      "kind": "length",
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
      "kind": "length",
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
      "kind": "length",
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
    "kind": "mass",
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
      "kind": "mass",
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
      "kind": "voltage",
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
      "kind": "current",
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
      "kind": "angle",
      "unit": "deg"
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
      "kind": "temperature-range",
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
      "kind": "money"
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
         "kind": "ratio",
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
      "kind": "temperature",
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
      "kind": "temperature",
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
        "kind": "money"
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
        "kind": "money"
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
        "kind": "money"
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
        "kind": "money"
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
        "kind": "money"
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
        "kind": "money"
       }
      ]
     }
    ]
   }
  ]
 }
}
