"""The pictures of the demonstration catalog: each plan's own model, rendered in a room that is made up.

    python -m tools.renderings out/models                       what scantling knows, a file a plan
    BPY tools/renderings/scene/render.py out/models/NAME.json plans/NAME/photo.jpg

The second runs in an environment of its own that holds `bpy` 5.0, a renderer as a Python module (it wants
Python 3.11). Nothing that a site or a test needs leans on it.
"""
