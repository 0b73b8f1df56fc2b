"""What is on a site only where its author puts it there."""

from __future__ import annotations

import re

from tests.host.test_build import build
from tests.support.blog import read, write_blog


def test_a_counter_and_comments_are_there_only_where_the_author_puts_them(tmp_path, published):
    """By default no page has either; the theme's own settings and templates put them in, into plans too."""
    site = write_blog(tmp_path)
    for name, words in (
        ("comments", "{% if page.meta.comments %}COMMENTS{% endif %}"),
        ("integrations/analytics/custom", "COUNTER"),
    ):
        path = site / "overrides" / "partials" / f"{name}.html"
        path.parent.mkdir(parents=True, exist_ok=True)
        path.write_text(words, "utf-8")
    text = (site / "mkdocs.yml").read_text("utf-8")
    (site / "mkdocs.yml").write_text(
        text.replace("{name: material}", "{name: material, custom_dir: overrides}")
        + "extra: {analytics: {provider: custom}}\n",
        "utf-8",
    )
    post = site / "docs" / "blog" / "posts" / "older.md"
    post.write_text(post.read_text("utf-8").replace("---\ndate", "---\ncomments: true\ndate"), "utf-8")
    done = build(site)

    assert done.returncode == 0, done.stderr
    assert "COUNTER" in read(site / "site", "plans/stool/index.html")
    assert "COMMENTS" in read(site / "site", "blog/older/index.html")
    assert "COMMENTS" not in read(site / "site", "plans/stool/index.html")
    for page in published.rglob("*.html"):
        assert not re.search("COUNTER|COMMENTS|analytics|gtag", page.read_text("utf-8")), page
